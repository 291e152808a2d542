/* How much room words take on paper. What types a reader of the drawing has nobody knows: widths
 * are those of wide sans-serif letters, so that words in narrower ones have room to spare. */
#ifndef REPORT_SVG_TYPE_H
#define REPORT_SVG_TYPE_H

#include "base/memory.h"
#include "report/svg/ink.h"

/* Words so set, as long as they are. */
nm type_width(const char *words, struct type type);
/* The type with the largest size, up to its own, at which words are no longer than that; not under
 * 1/20 mm. */
struct type type_fitted(const char *words, struct type type, nm width);
/* The next line of that width out of *rest, which goes past it: broken at a blank, or within a word
 * that is wider than a line. In the arena; NULL after the last. */
const char *type_line(const char **rest, nm size, nm width, struct arena *arena);

/* From one line to the next, as high as words on a plate. */
nm type_high(nm size);

#endif
