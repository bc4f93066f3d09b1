package leat.model.id;

/** The name of what a cable may start or end at. */
public sealed interface WireEndId extends Id permits SupplyId, SwitchId, LoadId, ManifoldId {}
