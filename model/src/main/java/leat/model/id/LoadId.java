package leat.model.id;

/** The name of what takes power from a circuit. */
public sealed interface LoadId extends WireEndId permits OutletId, LuminaireId, FeedId, ControllerId, TransformerId {}
