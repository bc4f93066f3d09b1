package leat.architecture.planted.spark.spark;

import leat.architecture.planted.spark.library.Cluster;

record GoodRunner(Cluster cluster) {}
