package handwheel.plant;

/** What lit a burner. */
public enum LitBy {
  /** Its own torch. */
  TORCH,
  /** Hot brick, with no other burner alight; forbidden practice. */
  HOT_BRICK,
  /** The flame of another burner of the same furnace. */
  NEIGHBOUR
}
