/* SVG as it is written: elements of SVG 1.1 (W3C Recommendation, Scalable Vector Graphics (SVG) 1.1
 * (Second Edition), 2011), a millimetre of paper being one unit. Widths of lines, colours and the
 * like are presentation attributes: no style sheet, no script, no link. Numbers have a point in
 * every locale. */
#ifndef REPORT_SVG_INK_H
#define REPORT_SVG_INK_H

#include "base/sink.h"
#include "report/svg/paper.h"

/* Words as they may stand in XML 1.0, between tags and within quotes: < > & " ' are escaped, what
 * is no character of XML or no UTF-8 becomes the replacement character U+FFFD. */
void ink_escaped(struct sink *out, const char *words);
/* Millimetres with at most 4 places. */
void ink_length(struct sink *out, nm length);
/* The same for a number of millionths. */
void ink_millionths(struct sink *out, int64_t millionths);

/* A group whose attributes are as printed: they must be good XML. */
void ink_open(struct sink *out, const char *format, ...) __attribute__((format(printf, 2, 3)));
void ink_close(struct sink *out);

/* Drawn as the group says. */
void ink_line(struct sink *out, struct at from, struct at to);
void ink_box(struct sink *out, struct box box);
void ink_circle(struct sink *out, struct at middle, nm radius);
/* Lines through points, closed or not. */
void ink_points(struct sink *out, const struct at *points, int count, bool is_closed);

enum anchor { ANCHOR_START, ANCHOR_MIDDLE, ANCHOR_END };
struct type {
	nm size;
	enum anchor anchor;
	bool is_upright; /* reads upwards */
	bool is_bold;
};
/* Words beside, or around, a point that is half as high as they are. */
void ink_words(struct sink *out, struct at at, struct type type, const char *words);

#endif
