/* What several files of acts share. */
#ifndef EDITOR_ACTS_SHARED_H
#define EDITOR_ACTS_SHARED_H

#include "editor/editor.h"
#include "editor/cards/cells.h"

/* False, having said what to do first, where no corner is pegged. act_mark.c. */
bool act_has_peg(struct editor *editor);
/* The same where nothing is marked. act_mark.c. */
bool act_has_mark(struct editor *editor);
/* Asks what to do with what is marked and carried, and does it. act_mark.c. */
void act_mark_ask(struct editor *editor);

/* The rectangle that is pegged or marked, else the cell under the cursor. act_fence.c. */
struct rectangle act_cells_meant(const struct editor *editor);

/* Ends a stroke in what is around the plot, having said what was done: adds how it is taken back,
 * and that nothing of it is mirrored. act_around.c. */
void act_around_end(struct editor *editor);

/* "A width of 3 ft: 3 cells.", and that it was rounded. act_peg.c. */
void act_say_cells(struct editor *editor, const char *what, const struct cells *cells);

/* Something to be laid, which is tried on a copy of the plot first. */
struct trial {
	struct laid (*lay)(struct plot *plot, const struct trial *trial);
	const char *words; /* what to know before; "": nothing */
	bool is_round;     /* walls may fail at its steps: that is found out before */
};
/* Lays it as a stroke; asks first where there is something to know. False where it was left.
 * act_trial.c. */
bool act_try(struct editor *editor, const struct trial *trial);

/* Lays what is in hand in a straight line from one cell to another, as a trail does: one stroke, or
 * a part of one while the mouse drags. act_lay.c. */
void act_lay_way(struct editor *editor, struct place from, struct place to);
#define ACT_IS_THERE "It lies there already."
/* Ends a stroke of laying: says `nothing`, unless NULL, where it changed nothing. That images fell
 * outside the plan is said once, not with every stroke. act_end.c. */
void act_lay_end(struct editor *editor, struct laid laid, const char *nothing);
/* Says, once, that images fall outside the plan. act_end.c. */
void act_say_outside(struct editor *editor, struct laid laid);

/* Sets a specimen of the plant in hand at the cursor, as a stroke. act_plant.c. */
void act_plant_here(struct editor *editor);
/* Lifts the specimens at the cursor, as a stroke; false where there are none. act_plant.c. */
bool act_lift_plants(struct editor *editor);

/* Ends the stroke of a card that was taken, and says so. act_card.c. */
void act_card_end(struct editor *editor);

/* Has the figures counted, where they are not there yet. False, having said so, where that was
 * given up. act_page.c. */
bool act_count(struct editor *editor);

/* Saves in the plot's own file; asks where somebody else has changed that since. True where the
 * plot is saved then, be it in another file; else it was said why not. act_file.c. */
bool act_save_plot(struct editor *editor);

/* Asks whether to write over a file, of which the sentence says that it is there. act_file.c. */
bool act_may_write_over(struct editor *editor, const char *sentence);

/* "another session (process 1234)"; holder 0: without the process. acts.c. */
const char *act_another_session(struct editor *editor, long holder);

/* Adds that there can be no lock, or no rescue, where the file is. opening.c. */
void act_add_lacks(const struct store *store, struct text *said);

/* Says the plan's size, and what has become of the mirror since it `had_axis` set. act_size.c. */
void act_say_size(struct editor *editor, bool had_axis);

/* "cell differs from its image", of one or of several. act_mirror.c. */
const char *act_differ_words(int64_t cells);

#endif
