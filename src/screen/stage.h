/* What is on the screen: the editor's state drawn, a question or a form in front of it, and the
 * keys that come in. All loops that wait for keys show and read through here, so that a change of
 * size, a stop and a signal are met alike in each. */
#ifndef SCREEN_STAGE_H
#define SCREEN_STAGE_H

#include "editor/editor.h"
#include "editor/key.h"
#include "screen/keys.h"
#include "screen/layout.h"
#include "screen/rows.h"

struct stage {
	struct asker asker; /* first: questions come by way of it */
	struct editor editor;
	struct keys keys;
	struct rows rows;
	bool is_pointing; /* the terminal reports the mouse */
	const struct front *front; /* that was shown last */
	bool is_slow; /* to count this plot took too long to wait for */
	struct text here; /* the words of what is under the cursor, as they were shown last */
	int here_rows; /* that they have */
};

/* What is drawn in front of the plan. */
struct front {
	enum state state;
	const char *const *keys; /* pairs for the last row, see status_key_words */
	/* Draws it; leaves the terminal's cursor where it belongs. */
	void (*draw)(const struct front *front, const struct layout *layout);
	/* What it leaves of the screen: so many rows and columns from the top left corner on. */
	struct area (*leaves)(const struct front *front, const struct layout *layout);
};

/* Draws everything from its state, with a front or NULL, unless keys are waiting. The state is
 * fitted to the screen first, and counted if that is done soon; drawing changes nothing. */
void stage_show(struct stage *stage, const struct front *front);
/* Does a task to its end; Esc gives it up, other keys wait. */
bool stage_await(struct stage *stage, struct task *task);
/* The next key; until it comes, what is not counted yet is counted, and shown. Stops and repaints
 * are seen to here and come back as PRESS_RESIZE. On a screen too small to show anything only a
 * save, an end and a change of size come through. */
int stage_key(struct stage *stage);
/* Stops the program until the shell continues it. */
void stage_pause(struct stage *stage);
struct layout stage_layout(const struct stage *stage);

#endif
