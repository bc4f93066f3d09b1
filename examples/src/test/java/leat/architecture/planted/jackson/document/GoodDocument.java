package leat.architecture.planted.jackson.document;

import tools.jackson.databind.JsonNode;

record GoodDocument(JsonNode node) {}
