package leat.model.id;

/** The name of what is laid in a trench: a pipe, a conduit, or a cable that lies in the ground bare. */
public sealed interface LaidId extends Id permits PipeId, ConduitId, CableId {}
