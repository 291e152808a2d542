/* A sheet while it is drawn, layer by layer: where the ground is on it, what pens there are, and
 * words that stand where there is room. Layers mark what they take; whatever comes later finds its
 * place beside it. */
#ifndef REPORT_SVG_SHEET_H
#define REPORT_SVG_SHEET_H

#include "report/svg/ink.h"
#include "report/svg/layout.h"
#include "report/svg/room.h"
#include "report/words/words.h"
#include "survey/survey.h"
#include "takeoff/setout/setout.h"

/* Words that have no room, counted. */
enum left_out { LEFT_IDS, LEFT_SIDES, LEFT_GATES, LEFT_POSTS, LEFT_SERVICES, LEFT_AROUND,
	LEFT_DROPS, LEFT_POINTS, LEFT_STRINGS, LEFT_PLANTS };
enum { LEFT_KINDS = LEFT_PLANTS + 1 };

struct sheet {
	struct report report; /* its words are cleared by each layer after each thing it draws */
	struct arena *arena;  /* until the sheet is done */
	const struct svg_asked *asked;
	const struct layout *layout;
	struct room room;     /* of the field */
	struct setout setout; /* where strings are asked for */
	int left_out[LEFT_KINDS];
};

/* Lines of one kind: attributes of a group, by whether it is plain. */
enum pen { PEN_FRAME, PEN_THIN, PEN_FENCE, PEN_GATE, PEN_POST,
	PEN_WATER, PEN_GAS, PEN_POWER, PEN_TELECOM, PEN_DRAIN, PEN_OTHER,
	PEN_TAP, PEN_HEADER, PEN_SLEEVE, PEN_DRIP, PEN_EMITTER,
	PEN_HOUSE, PEN_SHADE, PEN_KEEP, PEN_DROP, PEN_TIE, PEN_LEVEL, PEN_STRING, PEN_PLANT,
	PEN_EARTH, PEN_SOIL, PEN_MULCH, PEN_STONE, PEN_SOLID, PEN_WORDS };
enum { PENS = PEN_WORDS + 1 };
void sheet_pen(const struct sheet *sheet, enum pen pen);
/* What ends a pen's group. */
void sheet_lift(const struct sheet *sheet);

/* Where a spot of the ground is on paper, and a grid point. */
struct at sheet_spot(const struct sheet *sheet, struct spot spot);
struct at sheet_point(const struct sheet *sheet, struct place point);
/* The plan. */
struct box sheet_plan(const struct sheet *sheet);

/* A level or upright line that no words stand on, and what is clear of them on either side. */
void sheet_line(struct sheet *sheet, struct at a, struct at b);
extern const nm ROUND_LINE;

/* Sizes of words. */
extern const nm TYPE_LARGE, TYPE_USUAL, TYPE_SMALL, TYPE_LEAST;

/* What words take on the sheet, around a middle. */
struct box sheet_words_box(const char *words, struct at middle, struct type type);
/* Writes them on a plate of paper's own white there, if that is free; the type's anchor is not
 * asked. True where they are written. */
bool sheet_try(struct sheet *sheet, const char *words, struct at middle, struct type type);
/* The same at one of the four corners around a point, or beside it, `off` from it. */
bool sheet_try_beside(struct sheet *sheet, const char *words, struct at point, nm off,
	struct type type);

#endif
