/* The characters of a plan that is drawn, and what may still be written over. */
#ifndef REPORT_DRAWING_POINTS_H
#define REPORT_DRAWING_POINTS_H

#include "report/drawing/cuts.h"

/* What stands at a point besides printed characters. */
enum {
	POINT_FREE = ' ', /* within one region, or within open ground: nothing is there yet */
	POINT_BLANK = 1,  /* between two dots of a line */
	POINT_GAP = 2,    /* of a gate: stays empty */
	POINT_NAME = 3    /* part of a text with other characters than these */
};

struct points {
	struct cuts cuts;
	int columns, rows;
	char *at; /* row by row */
};

/* The character at a point; 0 beyond the drawing. */
char points_at(const struct points *points, int column, int row);
void points_put(struct points *points, int column, int row, char c);
/* True where no sheet ends within a word of so many characters. */
bool points_are_together(const struct points *points, int column, int count);
/* Letters, digits and names: what may not touch another word. */
bool points_is_word(char c);

/* Writes a word over characters that all are `over`; or in a row across an upright line of `over`:
 * its first character on the line, else its last, and the others on free ground. False, and nothing
 * written, where there is no room or a word beside it. */
bool points_write_over(struct points *points, int column, int row, const char *word, char over);
bool points_write_across(struct points *points, int column, int row, const char *word, char over);
/* Writes it whatever is there. */
void points_write(struct points *points, int column, int row, const char *word);
/* Where the middle of the plan's mirror is, in half characters; the middle of the plan where it
 * has no axis of its own. */
struct place points_middle(const struct points *points, const struct mirror *mirror);

#endif
