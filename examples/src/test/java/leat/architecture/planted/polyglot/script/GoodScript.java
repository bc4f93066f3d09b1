package leat.architecture.planted.polyglot.script;

import jdk.jshell.JShell;
import org.graalvm.polyglot.Value;

record GoodScript(Value value, JShell shell) {}
