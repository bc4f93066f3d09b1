package leat.architecture.planted.document.calc.coverage;

import leat.architecture.planted.document.document.Document;

record BadCoverage(Document document) {}
