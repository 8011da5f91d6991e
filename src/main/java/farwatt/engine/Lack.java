package farwatt.engine;

/** Common reasons for which a row has no value under a name; each is a number until someone asks for the words. */
enum Lack {
    EMPTY(Fault.Kind.EMPTY, EngineCode.EMPTY),
    OUT_OF_USE(Fault.Kind.OUT_OF_USE, EngineCode.OUT_OF_USE),
    NO_RELATION(Fault.Kind.NOT_APPLICABLE, EngineCode.NO_RELATION),
    NO_ZONE(Fault.Kind.NOT_APPLICABLE, EngineCode.NO_ZONE),
    NO_SUCH_NAME(Fault.Kind.NOT_APPLICABLE, EngineCode.NOT_APPLICABLE),
    NO_LIMIT(Fault.Kind.NOT_APPLICABLE, EngineCode.NO_LIMIT),
    NO_CLIFF(Fault.Kind.NOT_APPLICABLE, EngineCode.NO_CLIFF_DIRECT),
    PASSIVE(Fault.Kind.NOT_APPLICABLE, EngineCode.PASSIVE_NO_CLASS),
    PORT_TOO_SMALL(Fault.Kind.NOT_APPLICABLE, EngineCode.PORT_TOO_SMALL),
    NOTHING_CARRIED(Fault.Kind.NOT_APPLICABLE, EngineCode.NOTHING_CARRIED),
    NOTHING_AVAILABLE(Fault.Kind.ARITHMETIC, EngineCode.NOTHING_AVAILABLE),
    TOO_LARGE(Fault.Kind.ARITHMETIC, EngineCode.TOO_LARGE);

    final Fault.Kind kind;
    final EngineCode code;

    Lack(Fault.Kind kind, EngineCode code) {
        this.kind = kind;
        this.code = code;
    }
}
