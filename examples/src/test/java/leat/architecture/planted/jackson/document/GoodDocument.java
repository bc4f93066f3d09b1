package leat.architecture.planted.jackson.document;

import tools.jackson.core.JsonParser;

record GoodDocument(JsonParser parser) {}
