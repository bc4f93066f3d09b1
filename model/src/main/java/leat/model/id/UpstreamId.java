package leat.model.id;

/** What a pipe may be fed by: a source, another pipe, or a zone valve. */
public sealed interface UpstreamId extends Id permits SourceId, PipeId, ValveId {}
