/* The editor without its screen: the plot being drawn, where the cursor is, what is in hand. Acts change
 * it (act.h); the screen draws it, whole, from this state. It knows no terminal. */
#ifndef EDITOR_EDITOR_H
#define EDITOR_EDITOR_H

#include "plot/history/history.h"
#include "plot/edit/lay.h"
#include "plot/history/store.h"
#include "editor/ask/ask.h"
#include "editor/fence_map.h"
#include "report/panel/pages.h"
#include "editor/view.h"

enum state { STATE_REST, STATE_TRAIL, STATE_PEGGED, STATE_MARKED, STATE_QUESTION, STATE_FORM };
/* Since the button went down: nowhere, on the cursor's own cell, on another one, and on from there. */
enum drag { DRAG_NONE, DRAG_STILL, DRAG_MOVED, DRAG_AWAY };
enum { EDITOR_STATES = STATE_MARKED + 1, STROKES_A_RESCUE = 10, STEP_MOST = 12 };

struct editor {
	struct asker *asker;
	struct store store;
	const char *name;   /* of the plot's file, without its folder */
	struct plot plot;
	struct history *history;
	bool has_begun;     /* false until there is a plot that is worth rescuing */
	bool is_looking;    /* may not change the plot */
	bool is_over;       /* the session ends */

	/* Strokes done less those taken back, now and when the file was last the same; the latter -1 where
	 * no taking back can lead there. */
	int64_t position, saved_position;
	int strokes;        /* since the last rescue file */

	struct place cursor, peg;
	int step;           /* 1..STEP_MOST cells */
	char hand;          /* OPEN_GROUND or a legend letter */
	bool is_trailing, is_pegged, is_marked; /* one of them at most */
	struct rectangle marked; /* while is_marked: ground inside the plan */
	struct ground carried;   /* while is_marked: what lay there, turned and flipped since; owned */
	int frame, run;          /* the last frame's thickness and run's width: 1..SIDE_MOST cells */
	int fence;               /* the one that was drawn in last; its number may be another's since */
	enum drag drag;     /* of the mouse */
	bool is_dragging;   /* the trail: what was laid since the button went down is no stroke yet */
	bool told_outside;  /* that images fall outside the plan, since the mirror was last turned */

	struct view view;
	bool is_measuring;  /* width and depth of what the cursor is in stand on the rulers */
	enum panel_width panel;
	bool is_pointing;   /* with the mouse, which then is not the terminal's own */
	int page, page_top; /* shown in the panel: which, and its first line */
	struct text message; /* for the message row; empty: nothing to say */

	/* The price book that the plot's head names, read at opening and when the name changes. */
	char *book_name;    /* NULL: none is named */
	struct book book;
	bool has_book;      /* it could be read */

	/* Computed from plot and book by editor_refresh. */
	bool is_stale;
	struct arena arena;
	struct takeoff takeoff;
	int64_t faults;     /* of the mirror */
	struct fence_map fences;
	struct pages pages;
};

/* An editor without a plot, for the file `path`, which it takes the lock of. */
void editor_init(struct editor *editor, struct asker *asker, const char *path);
void editor_fini(struct editor *editor);
/* Takes over a plot; what was drawn before is gone. is_saved: the file holds the same. */
void editor_take(struct editor *editor, struct plot *plot, bool is_saved);

enum state editor_state(const struct editor *editor);
/* False also while a drag has laid something. */
bool editor_is_saved(const struct editor *editor);
/* Takes the rectangle from peg to cursor for the mark; lifts nothing. */
void editor_mark(struct editor *editor);
/* Forgets the mark and what was carried, if there is a mark. */
void editor_drop_mark(struct editor *editor);
/* The rectangle from peg to cursor. */
struct rectangle editor_pegged(const struct editor *editor);

/* Brings takeoff, faults and pages up to date; nothing where the plot has not changed. Must be called
 * between the last change and any look at them. */
void editor_refresh(struct editor *editor);

/* Ends a stroke: what changed becomes one step to take back; every tenth is followed by a rescue file.
 * False where nothing changed. */
bool editor_stroke(struct editor *editor);
/* Ends what the mouse is in the middle of; what it has laid becomes one stroke. */
void editor_end_drag(struct editor *editor);
/* One step back or on; the cursor goes where it happened. False where there is none. */
bool editor_take_back(struct editor *editor);
bool editor_put_back(struct editor *editor);

/* Writes unsaved work to the rescue file, if there is any. */
void editor_rescue(struct editor *editor);

/* Says a sentence on the message row instead of what stood there. */
void editor_say(struct editor *editor, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* "b Raised bed", ". open ground". */
void editor_name_letter(const struct editor *editor, char letter, struct text *out);
/* "4 ft x 3 ft" of so many columns and rows of cells. */
void editor_name_size(const struct editor *editor, int columns, int rows, struct text *out);
/* "4 ft across, 3 ft down": of a cell's near corner from the datum. */
void editor_name_place(const struct editor *editor, struct place cell, struct text *out);

#endif
