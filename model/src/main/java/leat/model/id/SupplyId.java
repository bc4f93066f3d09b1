package leat.model.id;

/** The name of what circuits start from. */
public sealed interface SupplyId extends WireEndId permits PanelId, TransformerId {}
