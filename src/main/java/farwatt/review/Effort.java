package farwatt.review;

/** How much a remedy asks of the people on the site, least first: what it takes decides before how far it goes. */
enum Effort {
    /** A setting of gear that hangs there, or of how the plan reckons. */
    SETTING,
    /** The same cable, connected otherwise. */
    ENDS,
    /** Another cable, or the same by a shorter way. */
    CABLE,
    /** Another way: apart from others, in the open, in the shade. */
    WAY,
    /** Other gear in the same place. */
    GEAR,
    /** A device on another node. */
    MOVE,
    /** One more switch on a trunk of its own. */
    SWITCH,
    /** A device less. */
    WITHOUT
}
