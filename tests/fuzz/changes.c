/* Any bytes, as the words of a step in a journal: they make a sound plot of another, or leave it as
 * it was; and a journal of that step gives the same plot. As a journal they are read to a sound
 * plot or not at all. */

#include "support/fuzz.h"
#include "support/plot_check.h"
#include "support/plots.h"

#include "plot/history/change.h"
#include "plot/history/journal_text.h"

#include <assert.h>
#include <string.h>

static void plot_start(struct plot *plot)
{
	plot_from_rows(plot, (const char *const[]){ "bb..", "b..p", "S...", NULL });
}

/* The plot after the journal's last step that can be read; false where it is none. */
static bool read(const struct text *journal, struct plot *plot)
{
	struct plot_stamp stamp;
	const char *why;

	plot_init(plot);
	return journal_text_read(journal, plot, &stamp, &why) != JOURNAL_UNREADABLE;
}

/* A step whose words make no plot is as good as none. */
static void check_journal(const struct text *words, const struct plot *expected)
{
	const struct plot_stamp none = { .exists = false };
	struct text journal = TEXT_EMPTY;
	struct plot plot, start;
	bool is_read;

	plot_start(&start);
	journal_text_step(&journal, journal_text_begin(&journal, &none, &start), words);
	is_read = read(&journal, &plot);
	assert(is_read);
	assert(plot_equal(&plot, expected));
	plot_fini(&plot);
	plot_fini(&start);
	text_fini(&journal);
}

int LLVMFuzzerTestOneInput(const uint8_t *bytes, size_t size)
{
	struct text words = TEXT_EMPTY;
	struct plot plot, start;

	text_add_bytes(&words, (const char *)bytes, size);
	plot_start(&plot);
	plot_start(&start);
	if (change_read((const char *)bytes, size, &plot))
		plot_check(&plot);
	else
		assert(plot_equal(&plot, &start));
	check_journal(&words, &plot);
	plot_fini(&plot);
	if (read(&words, &plot))
		plot_check(&plot);
	plot_fini(&plot);
	plot_fini(&start);
	text_fini(&words);
	return 0;
}
