/* What stands where on a sheet: the plan to scale in its field, remarks beside it in columns (below
 * it on a portrait sheet), the title block along the foot.
 *
 * Remarks are what the plan needs to be read, then sections of walls. The plan's scale is the
 * largest one at which it fits beside the former; of the latter as many stand beside it as do not
 * make it smaller, and the rest on sheets of their own. */
#ifndef REPORT_SVG_LAYOUT_H
#define REPORT_SVG_LAYOUT_H

#include "report/svg/paper.h"
#include "report/words/report.h"

/* What is drawn besides, where it is asked for: drops as measured; strings and points of the
 * set-out; hours of sun. */
enum { DRAW_LEVELS = 1, DRAW_STRINGS = 2, DRAW_SUN = 4 };
/* "levels", "strings", "sun", NULL at the end, by bit. */
extern const char *const svg_with_words[];

/* What is asked of a drawing. */
enum { AS_FITS = -1 };
struct svg_asked {
	int paper, turn; /* enum paper, enum paper_turn; AS_FITS: letter or A4, else twice that;
	                    whichever way the plan is larger */
	int scale;       /* 1 to how many; 0: the largest usual one that fits */
	int sheet;       /* from 1 */
	unsigned with;   /* a set of DRAW_... */
	bool is_plain;   /* black on white */
};
#define SVG_AS_FITS ((struct svg_asked){ .paper = AS_FITS, .turn = AS_FITS, .sheet = 1 })

struct sheet;
struct remark {
	nm height;
	bool leads; /* a heading: in one column with the next */
	/* Draws it, its left upper corner there. */
	void (*draw)(struct sheet *sheet, struct at at, const struct remark *remark);
	const void *of; /* what it is of, for that; or which of several */
	int index;
	const char *const *lines;
	int line_count;
};

struct remarks {
	const struct remark *list;
	int count;
	int needed; /* the first of them; the rest are sections */
};

enum { COLUMN_WIDTH = 60, COLUMN_GAP = 4 }; /* of remarks, in mm */

struct layout {
	enum paper paper;
	enum paper_turn turn;
	int scale;
	nm width, height;   /* of the sheet */
	struct box field;   /* of the plan and what is around it; later sheets have none */
	struct at datum;    /* the plan's left upper corner */
	struct box aside;   /* of remarks */
	int columns;
	int first, beyond;  /* the first remark on this sheet, and the first that is not */
	struct box title;
	int sheet, sheets;
};

/* False where it cannot be; *why then gets a sentence. Pure. */
bool layout_find(struct layout *out, const struct svg_asked *asked, const struct report *report,
	const struct remarks *remarks, struct text *why);
/* Where the remarks of the sheet stand: `places` gets one for each, from the first on. */
void layout_places(const struct layout *layout, const struct remarks *remarks, struct at *places);

#endif
