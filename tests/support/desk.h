/* Answers to the editor's questions, written down beforehand, and an editor on a plot in a
 * scratch folder to ask them.
 *
 *	struct desk *b = desk_new((const char *[]) { "bb..", "....", NULL });
 *	desk_answer(b, (const char *[]) { "Frame it", NULL });
 *	desk_type(b, "p");
 *
 * An answer to a question is one of its words to pick; to a card it is "Label: text; Label:
 * text", typed over what stands there. "" leaves either. A card that is refused takes the next
 * answer. An answer that cannot be given, a question without an answer and an answer never asked
 * for fail the test. */
#ifndef SUPPORT_DESK_H
#define SUPPORT_DESK_H

#include "editor/acts/acts.h"

struct desk {
	struct asker asker; /* first */
	struct editor editor;
	char *folder, *path;
	const char *const *answers; /* those still to be given; NULL: none */
	char asked[512];            /* the question's text or the card's title, last */
	char all_asked[2048];       /* since it was told what to answer, a line each */
	char first[80];             /* the answer that the cursor was on at first, last */
	/* its answers, or its fields with what stood in them, a line each */
	char offered[2048];
	char fault[512];            /* why a card was refused, last */
	int pauses, repaints;
	bool gives_up;              /* work that takes long */
};

/* rows as for plot_from_rows, taken as saved in "garden.plot", which is not written. */
struct desk *desk_new(const char *const *rows);
/* A raised bed behind a wall of 9 ft to the south, and a lawn in the open, at the latitude; NULL:
 * none is told. Counted. */
struct desk *desk_in_sun(const char *latitude);
/* As desk_new for a file that is there, or is not: opening has still to be done. */
struct desk *desk_open(const char *path);
/* Fails the test where answers are left over. */
void desk_free(struct desk *b);

/* Counts, and makes all pages. */
void desk_refresh(struct desk *b);
void desk_answer(struct desk *b, const char *const *answers);
/* All of them were asked for; the caller's array may go. */
void desk_answered(struct desk *b);
/* Presses keys: each byte of characters is one. */
void desk_type(struct desk *b, const char *characters);
void desk_press(struct desk *b, int key);
/* Does an act, whether or not it has a key. */
void desk_do(struct desk *b, enum act_id act);
/* Fails the test unless the ground looks so; keeps the rules of plot_check. */
void desk_check(struct desk *b, const char *const *rows);
/* Fails the test unless the last question's text, or the card's title, has these words. */
void desk_asked(struct desk *b, const char *words);
/* The panel's page of this name, and its line with a label, under a heading ("": none); without
 * them the test fails. */
const struct page *desk_page(const struct desk *b, const char *name);
const struct line *desk_line(const struct desk *b, const char *page, const char *under,
	const char *label);
/* Fails the test unless the message has these words. */
void desk_says(struct desk *b, const char *words);
/* The same for the whole message, or question; in place of the desk's folder they have FOLDER. */
void desk_says_whole(struct desk *b, const char *words);
void desk_asked_whole(struct desk *b, const char *words);

#endif
