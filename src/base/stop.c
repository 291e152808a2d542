#include "base/stop.h"
#include "base/clock.h"

#include <stdint.h>

enum { ASKS_A_LOOK = 16 }; /* the clock is looked at once in so many asks */

/* Loops are deep within the trades: there is no other way to them all. */
static struct stop_watch *watching;
static bool is_raised;
static unsigned asks;
static int64_t next_ms;

void stop_watch_by(struct stop_watch *watch)
{
	watching = watch;
	is_raised = false;
	asks = 0;
	next_ms = watch && watch->every_ms ? clock_ms() + watch->every_ms : 0;
}

static bool is_time(void)
{
	int64_t now;

	if (watching->every_ms == 0)
		return true;
	if (++asks % ASKS_A_LOOK)
		return false;
	now = clock_ms();
	if (now < next_ms)
		return false;
	next_ms = now + watching->every_ms;
	return true;
}

bool stop_asked(void)
{
	if (!is_raised && watching && is_time())
		is_raised = watching->is_wanted(watching);
	return is_raised;
}
