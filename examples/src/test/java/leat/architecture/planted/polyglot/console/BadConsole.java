package leat.architecture.planted.polyglot.console;

import jdk.jshell.JShell;

final class BadConsole {

    static boolean badShell(JShell shell) {
        return shell == null;
    }
}
