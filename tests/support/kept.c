#include "support/kept.h"

#include "plot/history/store.h"
#include "support/folder.h"
#include "support/plot_check.h"

#include <check.h>

bool kept_plot(const char *name, const struct plot *expected)
{
	struct text message = TEXT_EMPTY;
	struct plot found;
	bool is_same;

	plot_init(&found);
	is_same = store_read(in(name), &found, &message) && plot_equal(&found, expected);
	plot_fini(&found);
	text_fini(&message);
	return is_same;
}

struct plot_stamp kept_check_journal(const char *name, const struct plot *expected)
{
	struct text text = bytes_of(name);
	struct plot_stamp stamp;
	struct plot found;
	const char *why;

	plot_init(&found);
	ck_assert_int_eq(journal_text_read(&text, &found, &stamp, &why), JOURNAL_WHOLE);
	ck_assert(plot_equal(&found, expected));
	plot_fini(&found);
	text_fini(&text);
	return stamp;
}
