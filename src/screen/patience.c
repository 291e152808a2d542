#include "screen/patience.h"
#include "base/clock.h"

enum { LOOK_MS = 5, SOON_MS = 60 };

bool patience_was_long(const struct patience *patience)
{
	return clock_ms() >= patience->soon_ms;
}

static bool has_escape(struct keys *keys)
{
	return keys_are_waiting(keys) && keys->held == PRESS_ESCAPE;
}

static bool is_over(struct stop_watch *watch)
{
	const struct patience *patience = (const struct patience *)watch;
	int come = keys_look(patience->keys);

	switch (patience->until) {
	case UNTIL_SOON:
		return come != 0 || patience_was_long(patience);
	case UNTIL_KEY:
		if (come == 0)
			keys_idle(patience->keys);
		return come != 0;
	case UNTIL_ESCAPE:
		return come < 0 || has_escape(patience->keys); /* the silence after it tells */
	}
	return false;
}

void patience_begin(struct patience *patience, struct keys *keys, enum until until)
{
	*patience = (struct patience){ { is_over, LOOK_MS }, keys, until, clock_ms() + SOON_MS };
	stop_watch_by(&patience->watch);
}

void patience_end(void)
{
	stop_watch_by(NULL);
}
