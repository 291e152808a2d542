/* Everything that can be done, in one table: its key, its name, what it is for, and the one function
 * that does it. Row 23, the list of all acts and the help are read off the same rows. */
#ifndef EDITOR_ACTS_ACTS_H
#define EDITOR_ACTS_ACTS_H

#include "editor/editor.h"
#include "editor/key.h"

struct act {
	int key, until;        /* the keys from one to the other; mostly the same one twice */
	const char *key_name;  /* of what is only listed: of the key that offers it */
	const char *name;      /* in the list of acts; NULL: a further row for the act before it */
	const char *wish;      /* in the help: "I want to ..." */
	const char *hints[EDITOR_STATES]; /* on the last row, state by state; NULL: not there */
	int rank;              /* of the hint: 1 has its place before 2, where there is not room for all */
	bool writes;           /* changes the plot or a file: not for those who may only look */
	void (*run)(struct editor *editor, int key);
};

enum { ACTS_MOST = 96 };

/* All rows, the order being that of the help. */
const struct act *acts_all(int *count);
/* NULL where no act has the key. */
const struct act *acts_find(int key);
/* Does what the key stands for, or says that it stands for nothing. */
void acts_press(struct editor *editor, int key);

/* act_move.c */
void act_arrow(struct editor *editor, int key);
void act_edge(struct editor *editor, int key);
void act_step(struct editor *editor, int key);
void act_place(struct editor *editor, int key);
/* act_view.c */
void act_nearer(struct editor *editor, int key);
void act_farther(struct editor *editor, int key);
void act_overview(struct editor *editor, int key);
void act_centre(struct editor *editor, int key);
void act_scroll(struct editor *editor, int key);
void act_panel(struct editor *editor, int key);
void act_measure(struct editor *editor, int key);
void act_mouse(struct editor *editor, int key);
/* act_lay.c */
void act_take(struct editor *editor, int key);
void act_lay(struct editor *editor, int key);
void act_lift(struct editor *editor, int key);
void act_trail(struct editor *editor, int key);
void act_flood(struct editor *editor, int key);
/* act_end.c */
void act_step_back(struct editor *editor, int key);
/* act_peg.c */
void act_peg(struct editor *editor, int key);
void act_fill(struct editor *editor, int key);
void act_frame(struct editor *editor, int key);
void act_run(struct editor *editor, int key);
/* act_mark.c */
void act_mark(struct editor *editor, int key);
void act_stamp(struct editor *editor, int key);
void act_move_marked(struct editor *editor, int key);
void act_lift_marked(struct editor *editor, int key);
void act_turn(struct editor *editor, int key);
void act_flip_across(struct editor *editor, int key);
void act_flip_down(struct editor *editor, int key);
/* act_fence.c */
void act_fence(struct editor *editor, int key);
void act_fence_lay(struct editor *editor, int key);
void act_gate_set(struct editor *editor, int key);
void act_fence_lift(struct editor *editor, int key);
void act_gate_lift(struct editor *editor, int key);
void act_fence_plan(struct editor *editor, int key);
/* act_size.c */
void act_size(struct editor *editor, int key);
void act_crop_to_mark(struct editor *editor, int key);
/* act_mirror.c */
void act_left_right(struct editor *editor, int key);
void act_top_bottom(struct editor *editor, int key);
void act_half_turn(struct editor *editor, int key);
void act_fold(struct editor *editor, int key);
void act_next_fault(struct editor *editor, int key);
/* act_axis.c */
void act_axis(struct editor *editor, int key);
/* act_undo.c */
void act_take_back(struct editor *editor, int key);
void act_put_back(struct editor *editor, int key);
/* act_page.c */
void act_next_page(struct editor *editor, int key);
void act_page_before(struct editor *editor, int key);
void act_pages(struct editor *editor, int key);
void act_further(struct editor *editor, int key);
void act_back(struct editor *editor, int key);
/* act_sheet.c */
void act_sheets(struct editor *editor, int key);
/* act_file.c */
void act_save(struct editor *editor, int key);
void act_takeoff(struct editor *editor, int key);
void act_leave(struct editor *editor, int key);
/* act_list.c */
void act_all(struct editor *editor, int key);
void act_help(struct editor *editor, int key);
void act_pause(struct editor *editor, int key);
void act_repaint(struct editor *editor, int key);

/* Lays what is in hand straight along the way, as a trail does: one stroke, or a part of one while the
 * mouse drags. act_lay.c. */
void act_lay_way(struct editor *editor, struct place from, struct place to);
#define ACT_IS_THERE "It lies there already."
/* Ends a stroke of laying: says `nothing`, unless NULL, where it changed nothing. That images fell
 * outside the plan is said once, not with every stroke. act_end.c. */
void act_lay_end(struct editor *editor, struct laid laid, const char *nothing);
/* Says, once, that images fall outside the plan. act_end.c. */
void act_tell_outside(struct editor *editor, struct laid laid);
/* What to do with what is marked and carried. act_mark.c. */
void act_mark_ask(struct editor *editor);
/* Saves, asking where somebody else has changed the file. False where it is not saved. act_file.c. */
bool act_file_save(struct editor *editor);

#endif
