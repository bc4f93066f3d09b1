package leat.architecture.planted.spark.library;

/** Stands for a class of the library, which the class path of this module does not have. */
public record Cluster(String name) {}
