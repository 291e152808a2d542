/* Lengths on a sheet of paper, sheets, and the scales that plans are drawn to. On paper, as on the
 * ground, lengths are whole nanometres; from the sheet's left upper corner. */
#ifndef REPORT_SVG_PAPER_H
#define REPORT_SVG_PAPER_H

#include "base/length.h"

struct at {
	nm x, y;
};

struct box {
	nm left, top, right, bottom;
};

nm box_width(struct box box);
nm box_height(struct box box);
struct at box_middle(struct box box);
/* Of that size, around a middle. */
struct box box_around(struct at middle, nm width, nm height);
/* Larger by so much on each side. */
struct box box_grown(struct box box, nm by);
/* What two have in common; right < left or bottom < top where that is nothing. */
struct box box_common(struct box a, struct box b);

/* ISO 216 and ASME Y14.1 have these sizes; A3 and tabloid are twice A4 and letter. */
enum paper { PAPER_A4, PAPER_A3, PAPER_LETTER, PAPER_TABLOID };
enum { PAPERS = PAPER_TABLOID + 1 };

struct paper_row {
	const char *word, *name;
	nm width, height; /* portrait */
	enum units units; /* that its size is told in */
};
extern const struct paper_row papers[PAPERS];
/* "a4" ... "tabloid", NULL at the end; and ways to turn a sheet. */
extern const char *const paper_words[PAPERS + 1];
enum paper_turn { TURN_PORTRAIT, TURN_LANDSCAPE };
enum { PAPER_TURNS = TURN_LANDSCAPE + 1 };
extern const char *const paper_turn_words[PAPER_TURNS + 1];

/* A scale is 1 to a whole number: so many times as long on the ground. The usual ones, larger
 * pictures first, ended by 0: metric by ISO 5455 with 1:25 besides, imperial an inch to 1, 2, 4, 5,
 * 8, 10, 20, 30, 40 or 50 feet, of which 1:48 is also 1/4 inch to a foot. Common practice. */
const int *scales_of(enum units units);
enum { SCALE_LEAST = 10, SCALE_MOST = 10000 }; /* what may be asked for */
/* Reads "1:50", or what an inch stands for, "4 ft": so many whole inches. False where it is neither
 * or out of range. */
bool scale_read(const char *word, int *scale);
/* "1:50", in an imperial plot of whole feet "1 in = 4 ft (1:48)". */
void scale_write(struct text *out, int scale, enum units units);

/* What a length of the ground is on paper, to the nearest nanometre. */
nm scaled(nm length, int scale);

#endif
