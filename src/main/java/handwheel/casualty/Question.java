package handwheel.casualty;

import handwheel.diagnostics.SourceSpot;

/**
 * A question to be asked after a drill, with its model answer.
 *
 * @param ask the question
 * @param answer what a good answer says
 * @param spot where it stands in the script
 */
public record Question(String ask, String answer, SourceSpot spot) {}
