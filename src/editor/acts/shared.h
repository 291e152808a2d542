/* What several files of acts share. */
#ifndef EDITOR_ACTS_SHARED_H
#define EDITOR_ACTS_SHARED_H

#include "editor/editor.h"

/* False, having said what to do first, where no corner is pegged. act_mark.c. */
bool act_has_peg(struct editor *editor);
/* The same where nothing is marked. act_mark.c. */
bool act_has_mark(struct editor *editor);
/* Asks what to do with what is marked and carried, and does it. act_mark.c. */
void act_mark_ask(struct editor *editor);

/* Lays what is in hand in a straight line from one cell to another, as a trail does: one stroke, or
 * a part of one while the mouse drags. act_lay.c. */
void act_lay_way(struct editor *editor, struct place from, struct place to);
#define ACT_IS_THERE "It lies there already."
/* Ends a stroke of laying: says `nothing`, unless NULL, where it changed nothing. That images fell
 * outside the plan is said once, not with every stroke. act_end.c. */
void act_lay_end(struct editor *editor, struct laid laid, const char *nothing);
/* Says, once, that images fall outside the plan. act_end.c. */
void act_say_outside(struct editor *editor, struct laid laid);

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
