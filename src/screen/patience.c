#include "screen/patience.h"

#include <time.h>

enum { LOOK_MS = 5, SOON_MS = 60 };

static int64_t now_ms(void)
{
	struct timespec now;

	clock_gettime(CLOCK_MONOTONIC, &now);
	return (int64_t)now.tv_sec * 1000 + now.tv_nsec / 1000000;
}

bool patience_was_long(const struct patience *patience)
{
	return now_ms() >= patience->soon_ms;
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
	*patience = (struct patience){ { is_over, LOOK_MS }, keys, until, now_ms() + SOON_MS };
	stop_watch_by(&patience->watch);
}

void patience_end(void)
{
	stop_watch_by(NULL);
}
