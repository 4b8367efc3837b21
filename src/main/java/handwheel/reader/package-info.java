/**
 * Turns the text of scripts and ship files into the models of {@code casualty} and {@code ship},
 * and says everything that is wrong with them at once, each finding with its place.
 *
 * <p>YAML is read as trees of texts: what a text means is decided by the key it stands under, never
 * by what it looks like. So {@code on}, {@code 012} and {@code 12:30} are just texts here.
 *
 * <p>This package never opens a file, never runs a script, never guesses what an author may have
 * meant and never throws for a person's mistake. It is the only one that uses SnakeYAML, and {@link
 * handwheel.reader.YamlText} the only class.
 *
 * <p>Reading order: {@link handwheel.reader.ScriptReader}, {@link handwheel.reader.ShipReader},
 * then {@link handwheel.reader.YamlText}, {@link handwheel.reader.YamlNode}, {@link
 * handwheel.reader.Shape}, {@link handwheel.reader.MapNode}, {@link handwheel.reader.Scalars}, and
 * one reader for each part of a file. {@link handwheel.reader.FindingId} lists all that can be
 * found.
 */
@org.jspecify.annotations.NullMarked
package handwheel.reader;
