/* Keys as the editor sees them: a character's code, or one of these beyond all characters. */
#ifndef EDITOR_KEY_H
#define EDITOR_KEY_H

enum key {
	PRESS_NOTHING = 0,
	PRESS_FIRST = 0x10ffff, /* the last character */
	PRESS_LEFT, PRESS_RIGHT, PRESS_UP, PRESS_DOWN,
	PRESS_VIEW_LEFT, PRESS_VIEW_RIGHT, PRESS_VIEW_UP, PRESS_VIEW_DOWN, /* with Shift */
	PRESS_ON_LEFT, PRESS_ON_RIGHT, PRESS_ON_UP, PRESS_ON_DOWN, /* with Ctrl */
	PRESS_HOME, PRESS_END, PRESS_PAGE_UP, PRESS_PAGE_DOWN,
	PRESS_F1, PRESS_F2, PRESS_F3, PRESS_F4, PRESS_F5, PRESS_F6, PRESS_F7, PRESS_F8, PRESS_F9,
	PRESS_ENTER, PRESS_TAB, PRESS_BACK_TAB, PRESS_BACKSPACE, PRESS_DELETE,
	/* in a field: Ctrl-A, Ctrl-E, Ctrl-U, Ctrl-W, Ctrl-K */
	PRESS_LINE_START, PRESS_LINE_END, PRESS_ERASE_LINE, PRESS_ERASE_WORD, PRESS_ERASE_REST,
	PRESS_ESCAPE,  /* Esc or Ctrl-C */
	PRESS_PAUSE,   /* Ctrl-Z */
	PRESS_REPAINT, /* Ctrl-L */
	PRESS_OTHER,   /* a key that nothing is bound to */
	PRESS_UNREAD,  /* a byte, where the locale has no letters beyond ASCII */
	PRESS_PASTE,   /* a text was pasted */
	PRESS_POINT,   /* a mouse's report, a struct point with it */
	PRESS_RESIZE,  /* the terminal has another size */
	PRESS_CONTINUE, /* it was stopped from outside and goes on */
	PRESS_OVER     /* the session must end: a signal, or the terminal is gone */
};

enum point_kind { POINT_PRESS, POINT_DRAG, POINT_RELEASE, POINT_WHEEL_UP, POINT_WHEEL_DOWN };

/* What a mouse's one button or wheel did, and over which character of the screen. */
struct point {
	enum point_kind kind;
	int row, column;
};

#endif
