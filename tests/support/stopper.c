#include "support/stopper.h"

#include <stddef.h>

static bool is_reached(struct stop_watch *watch)
{
	struct stopper *stopper = (struct stopper *)watch;

	return ++stopper->asks == stopper->at;
}

void stopper_begin(struct stopper *stopper, int64_t at)
{
	*stopper = (struct stopper){ .watch.is_wanted = is_reached, .at = at };
	stop_watch_by(&stopper->watch);
}

void stopper_end(void)
{
	stop_watch_by(NULL);
}
