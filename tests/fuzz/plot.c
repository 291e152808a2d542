/* Any bytes are either refused with a place and a reason, or read into a sound plot; such a plot is
 * written, read and written again without a difference. */

#include "support/fuzz.h"
#include "support/plot_check.h"

#include "plot/format/format.h"

#include <assert.h>
#include <string.h>

static void check_round_trip(const struct plot *plot)
{
	struct plot again;
	struct text first = TEXT_EMPTY, second = TEXT_EMPTY;
	struct diag d = { 0 };

	plot_init(&again);
	format_write(plot, &first);
	bool is_read = format_read(first.bytes, first.length, &again, &d);
	assert(is_read);
	plot_check(&again);
	assert(plot_equal(plot, &again));
	format_write(&again, &second);
	assert(first.length == second.length && !memcmp(first.bytes, second.bytes, first.length));
	text_fini(&first);
	text_fini(&second);
	plot_fini(&again);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size)
{
	struct plot plot;
	struct diag d = { 0 };

	plot_init(&plot);
	if (format_read((const char *)bytes, size, &plot, &d)) {
		plot_check(&plot);
		check_round_trip(&plot);
	} else {
		assert(d.line >= 1 && d.column >= 1 && d.expected[0]);
	}
	plot_fini(&plot);
	return 0;
}
