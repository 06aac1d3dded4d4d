/**
 * Sheets drawn to scale, as plain lists of marks in millimetres of paper: one drawing layer for the
 * report and the viewer. Knows nothing of files or screens; {@link slantlight.sheet.SvgText} turns
 * a drawing into SVG.
 */
package slantlight.sheet;
