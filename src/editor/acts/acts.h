/* Everything that can be done. Each act is one row of a table, at the end of the act_*.c that
 * has its functions, where the lists show it; its identity is in the list below. The hints of the
 * last row, the list of all acts and the help are read off these rows, and so is the name of a key
 * wherever a message has one. */
#ifndef EDITOR_ACTS_ACTS_H
#define EDITOR_ACTS_ACTS_H

#include "editor/editor.h"
#include "editor/key.h"

/* In the order of the hints. */
enum act_id {
	ACT_NONE,
	ACT_ARROW, ACT_STEPS, ACT_ON, ACT_EDGE, ACT_PLACE, ACT_STEP,
	ACT_FARTHER, ACT_NEARER, ACT_OVERVIEW, ACT_CENTRE, ACT_MEASURE, ACT_SCROLL,
	ACT_TAKE, ACT_LAY, ACT_LIFT, ACT_TRAIL,
	ACT_PEG, ACT_FILL, ACT_FRAME, ACT_RUN, ACT_BEND, ACT_DISC, ACT_ROUNDED,
	ACT_FLOOD,
	ACT_MARK, ACT_MARK_REGION, ACT_STAMP, ACT_MOVE_MARKED, ACT_TURN, ACT_FLIP_ACROSS,
	ACT_FLIP_DOWN, ACT_LIFT_MARKED, ACT_RELETTER,
	ACT_FENCE, ACT_FENCE_LAY, ACT_GATE_SET, ACT_FENCE_OUT, ACT_GATE_OUT, ACT_FENCE_PLAN,
	ACT_SERVICE, ACT_KEEP_CIRCLE, ACT_KEEP_RECTANGLE, ACT_HOUSE, ACT_SHADE, ACT_TIE, ACT_DROP,
	ACT_LEVELS, ACT_FINISH, ACT_SHOW_LEVELS, ACT_AROUND_OUT,
	ACT_PLANT_ADD, ACT_DRIFT, ACT_DRIFT_OUT,
	ACT_TAKE_BACK, ACT_PUT_BACK,
	ACT_LEFT_RIGHT, ACT_TOP_BOTTOM, ACT_HALF_TURN, ACT_FOLD, ACT_NEXT_FAULT, ACT_AXIS,
	ACT_NEXT_PAGE, ACT_PAGE_BEFORE, ACT_PAGES, ACT_PANEL, ACT_FURTHER, ACT_BACK,
	ACT_GO_THERE, ACT_NEXT_SNAG,
	ACT_CARDS, ACT_SIZE, ACT_CROP_TO_MARK, ACT_STRIP_PUT, ACT_STRIP_TAKE,
	ACT_NAME, ACT_FILES, ACT_SAVE, ACT_SAVE_AS, ACT_COPY, ACT_TAKEOFF, ACT_DRAWING,
	ACT_PRICES, ACT_PRICE, ACT_LEAVE,
	ACT_MOUSE, ACT_PAUSE, ACT_REPAINT, ACT_STEP_BACK, ACT_ALL, ACT_HELP,
	ACTS, /* the end */
	ACT_FIRST = ACT_ARROW
};
enum { KEY_RANGES_MOST = 3 };

/* The keys from one to the other; mostly the same one twice. PRESS_NOTHING: none. */
struct key_range {
	int first, last;
};

struct act {
	enum act_id id;
	struct key_range keys[KEY_RANGES_MOST]; /* none: the act has no key of its own */
	const char *key_name; /* for an act without a key of its own: of the key that leads to it */
	const char *key_said; /* in a sentence, where it is shorter; NULL: key_name */
	const char *name;     /* in the list of acts */
	const char *wish;     /* in the help: "I want to ..." */
	/* What is set now of what it sets, in the list of acts: "on"; NULL: nothing. */
	const char *(*state)(const struct editor *editor);
	const char *words;    /* everyday words that find it in both, between blanks; NULL: none */
	const char *hints[EDITOR_STATES]; /* on the last row, by the editor's state; NULL: none */
	int rank;             /* of the hint: 1 is shown before 2 when the row is short */
	bool writes;          /* changes the plot or a file: not for those who may only look */
	bool lays;            /* what is in hand, which is named with its step */
	bool plants;          /* it may be a plant */
	/* One of these three: */
	void (*run)(struct editor *editor);
	void (*run_with)(struct editor *editor, int with); /* acts that are nearly the same */
	void (*run_by_key)(struct editor *editor, int key); /* it says how far, where to, which */
	int with;
};

/* Its row; id is ACT_FIRST..ACTS - 1. */
const struct act *acts_get(enum act_id id);
/* NULL where no act has the key. */
const struct act *acts_find(int key);
/* The name of an act's key, for a sentence. */
const char *acts_key(enum act_id id);

/* Does what a key does: runs its act, or says that it has none. */
void acts_press(struct editor *editor, int key);
/* The same for an act without run_by_key, whether or not it has a key. */
void acts_do(struct editor *editor, enum act_id id);
/* Runs such an act as a part of another, which may have said something already. */
void acts_run(struct editor *editor, enum act_id id);

/* From here on the act is what is being done: the step that comes of it has its name. So it is with
 * every act that is run, unless it has run_by_key. */
void acts_name_step(struct editor *editor, enum act_id id);

/* An answer that is an act. */
struct choice {
	const char *words;
	enum act_id act;
	enum act_id by; /* whose key is named beside the words and picks it; ACT_NONE: none */
};

enum { CHOICES_MOST = 12 };

/* Asks, and runs what is picked; `count` is at most CHOICES_MOST. */
void choice_ask(struct editor *editor, const char *text, const struct choice *choices, int count);

#endif
