package farwatt.window.grid;

/** Opens the panels that lie over the cells. */
interface Panels {
    /** To choose columns. */
    void columns();

    /** To add or change a column of the person's own. */
    void own(OwnColumn form);
}
