/** Tables and the hand-over record as workbooks and as plain lists. */
@NullMarked
package farwatt.workbook;

import org.jspecify.annotations.NullMarked;
