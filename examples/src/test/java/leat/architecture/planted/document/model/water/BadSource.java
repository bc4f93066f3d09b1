package leat.architecture.planted.document.model.water;

import leat.architecture.planted.document.document.Document;

record BadSource(Document document) {}
