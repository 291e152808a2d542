/* The editor without its screen: the plot being drawn, where the cursor is, what is in hand. Acts
 * (acts/acts.h) change it; the screen draws it, whole, from this state. It knows no terminal. */
#ifndef EDITOR_EDITOR_H
#define EDITOR_EDITOR_H

#include "plot/history/history.h"
#include "plot/edit/patch.h"
#include "plot/history/store.h"
#include "editor/ask/ask.h"
#include "survey/around_map.h"
#include "survey/fence_map.h"
#include "survey/middle.h"
#include "report/panel/pages.h"
#include "report/words/words.h"
#include "editor/view.h"

enum state { STATE_REST, STATE_TRAIL, STATE_PEGGED, STATE_MARKED, STATE_QUESTION, STATE_FORM };
/* What the plan shows in place of what its ground is, as far as that is there. */
enum layer { LAYER_NONE, LAYER_LEVELS, LAYER_SUN };
enum drag {
	DRAG_NONE,  /* no button is down */
	DRAG_STILL, /* pressed on the cursor's cell */
	DRAG_MOVED, /* pressed on another cell */
	DRAG_AWAY   /* moved off the cell where it was pressed, or laying a trail */
};
enum { EDITOR_STATES = STATE_MARKED + 1, FAULTS_UNKNOWN = -1, BENDS_MOST = 30 };

struct editor {
	struct asker *asker;
	struct store store;
	char *name;              /* of the plot's file without its folder, fit to be shown */
	const struct plot *plot; /* changed by way of editor_edit alone */
	struct drawing *drawing; /* holds the plot */
	struct history *history;
	bool has_begun;     /* false until there is a plot that is worth rescuing */
	char *spoilt;       /* why the file, which is there, cannot be read; NULL: it can. Owned */
	bool is_looking;    /* may not change the plot */
	bool is_over;       /* the session ends */

	/* Strokes done minus strokes taken back; and that number when the file was last the same,
	 * -1 when taking back can no longer lead there. */
	int64_t position, saved_position;
	int unkept;         /* how many of the last strokes and steps back are in no journal */
	struct text no_rescue; /* why they are in none: a sentence without its full stop */

	struct place cursor, peg;
	struct place bends[BENDS_MOST]; /* of a run, pegged since; in order */
	int bend_count;
	int step;           /* of the arrows: 1..SIDE_MOST cells */
	int steps;          /* of the next move, as they were typed; 0..SIDE_MOST, 0: none were */
	char hand;          /* OPEN_GROUND, or the letter of an entry or a plant */
	bool is_trailing, is_pegged, is_marked; /* one of them at most */
	struct rectangle marked; /* while is_marked: ground inside the plan */
	struct ground shape;     /* while is_marked: its letters, as a patch has them; owned */
	struct patch carried;    /* while is_marked: its ground, turned and flipped since; owned */
	int frame, run;     /* cells of the last frame's thickness, of the last run's width */
	int fence, service; /* indexes of those drawn in last; they may have been removed since */
	enum drag drag;     /* of the mouse */
	bool is_dragging;   /* the drag has laid something, which is no stroke yet */
	bool said_outside;  /* it was said that images fall outside the plan; cleared when the
	                     * mirror is turned */

	struct view view;
	enum layer layer;
	const struct moment *moment; /* whose shadows are shown instead (light.h); NULL: none's */
	bool is_measuring;  /* the rulers show width and depth of what the cursor is in */
	enum panel_width panel;
	bool is_pointing;   /* the mouse is used here, not by the terminal */
	int page, page_top; /* the page in the panel, and its first line in view */
	int page_rows;      /* lines of it in view, as it was last drawn */
	size_t snag;        /* the number of the one last gone to, in the takeoff's order */
	struct text message; /* for the message row; empty: nothing to say */
	struct arena words;  /* what acts say and ask, put together; emptied before each act */

	/* The price book that the plot's head names, read at opening and when the name changes. */
	char *book_name;    /* NULL: none is named */
	struct file_stamp book_stamp; /* of its file then */
	struct book book;
	bool has_book;      /* it could be read */

	struct text doing;  /* the name of the step that the next stroke makes */
	bool is_edited;     /* the plot was given out to be changed since the last stroke */
	/* Counted of plot and book by editor_refresh. */
	bool is_stale;      /* takeoff does not hold: the plot may have moved or changed */
	bool has_news;      /* pages do not hold: it has changed */
	struct arena arena;
	struct takeoff takeoff; /* points into the plot */
	const struct middle *middles; /* one for each region of the survey */
	int64_t faults;     /* of the mirror; FAULTS_UNKNOWN until they are counted */
	struct pages pages;
	/* Drawn of the plot by editor_draw. */
	bool has_moved;     /* these do not hold */
	struct arena drawn;
	struct fence_map fences;
	struct around_map around;
};

/* An editor without a plot, for the file `path`, which it takes the lock of. */
void editor_init(struct editor *editor, struct asker *asker, const char *path);
void editor_fini(struct editor *editor);
/* Takes over a plot; what was drawn before is gone. is_saved: the file holds the same; else the
 * plot is written down at once, as unsaved work. */
void editor_take(struct editor *editor, struct plot *plot, bool is_saved);

/* The plot was written to its file as it is. */
void editor_saved(struct editor *editor);
/* Goes on in the file of `next`, which holds the plot as it is, as the one who writes it; *next has
 * the file from before, for the caller to close. */
void editor_move(struct editor *editor, struct store *next);

/* The plot to be changed: the one way to it for an act, which ends with editor_stroke. What was
 * computed from the plot does not hold from here on. The pointer, and any into the plot, hold until
 * the next stroke, step back or step on. */
struct plot *editor_edit(struct editor *editor);

enum state editor_state(const struct editor *editor);
/* False also while a drag has laid something. */
bool editor_is_saved(const struct editor *editor);
/* Takes the rectangle from peg to cursor for the mark; lifts nothing. */
void editor_mark(struct editor *editor);
/* The same for the region around the cursor, and nothing else in the rectangle around it. */
void editor_mark_region(struct editor *editor);
/* Forgets the mark and what was carried, if there is a mark. */
void editor_drop_mark(struct editor *editor);
/* A letter of the legend or of a plant, or open ground. A plant ends a trail: it is set one by
 * one. */
void editor_take_in_hand(struct editor *editor, char letter);
/* The rectangle from peg to cursor. */
struct rectangle editor_pegged(const struct editor *editor);

/* What is computed from the plot: counting.c.
 *
 * Whether takeoff, faults and the page in the panel are there and hold. Where they are not, nobody
 * looks at them. */
bool editor_is_counted(const struct editor *editor);
/* Counts them, where they are not. False where it was stopped (base/stop.h). */
bool editor_refresh(struct editor *editor);
/* Makes the other pages too: a page that was made before a stroke can show by its stars what the
 * stroke changed; those compared with the plot's file only where they come next, since that takes
 * as long as counting. False where it was stopped. The editor is counted. */
bool editor_refresh_pages(struct editor *editor);
/* Whether the hours of sun that the plan shows are there and hold, if it shows any; they are on a
 * page of their own. Counts them, and of what editor_refresh counts the takeoff alone: pages may
 * take longer. False where it was stopped. */
bool editor_has_light(const struct editor *editor);
bool editor_refresh_light(struct editor *editor);
/* The faults of the mirror, counted now. */
int64_t editor_faults(struct editor *editor);
/* Brings up to date what is drawn of the plot besides its ground. Takes no time. */
void editor_draw(struct editor *editor);

/* Ends a stroke: what changed becomes one step to take back, by the name of what is being done, and
 * is written down for a rescue, as steps back and on are. False where nothing changed. */
bool editor_stroke(struct editor *editor);
/* Part of a drag: what `laid` counts was changed, and becomes a stroke when the drag ends. */
void editor_dragged(struct editor *editor, struct laid laid);
/* Ends what the mouse is in the middle of; what it has laid becomes one stroke. */
void editor_end_drag(struct editor *editor);
/* One step back or on; the cursor moves to where it happened. Returns the name of what was done,
 * which holds until the next stroke; NULL where there is no such step. */
const char *editor_take_back(struct editor *editor);
const char *editor_put_back(struct editor *editor);

/* While nothing else is to be done: has what was written down put on the disk, at most once a
 * second. In how many ms it is to be called again if nothing happens, -1: it need not be. */
int editor_idle(struct editor *editor);
/* False where work that is not saved is lost if the session is cut off, or would be. */
bool editor_has_rescue(const struct editor *editor);
/* The session is cut off: unsaved work is left for the next, and *said gets a sentence that says
 * where it is, or how much is lost; none where all is saved. */
void editor_rescue(struct editor *editor, struct text *said);

/* Says a sentence of any length on the message row instead of what it says now. */
void editor_say(struct editor *editor, const char *format, ...)
	__attribute__((format(printf, 2, 3)));
/* The plot in words (report/words/words.h), which are put into the arena. */
struct report editor_report(const struct editor *editor, struct arena *words);

#endif
