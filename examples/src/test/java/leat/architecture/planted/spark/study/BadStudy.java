package leat.architecture.planted.spark.study;

import leat.architecture.planted.spark.library.Cluster;

record BadStudy(Cluster cluster) {}
