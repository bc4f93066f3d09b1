package leat.script;

/** A view through which a script holds a value of the host; the script hands it back and we take the value out. */
interface HostValue {

    Object host();
}
