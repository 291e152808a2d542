/* The manual of the format names every keyword of the attribute table in its block, with the
 * words of its choices. */
#include "base/file.h"
#include "plot/block.h"
#include "support/runner.h"

#include <string.h>

/* Where each block's list begins in the page. */
static const char *const headings[BLOCK_KINDS] = {
	[BLOCK_HEAD] = "\n.Sh HEAD\n", [BLOCK_ALLOW] = "\n.It Ic allow\n",
	[BLOCK_BED] = "\n.Ss bed\n",   [BLOCK_PATH] = "\n.Ss path\n",
	[BLOCK_LAWN] = "\n.Ss lawn\n", [BLOCK_FIXTURE] = "\n.Ss fixture\n",
	[BLOCK_FENCE] = "\n.Ss fence\n", [BLOCK_SERVICE] = "\n.Ss service\n",
	[BLOCK_PLANT] = "\n.Ss plant\n",
	[BLOCK_RATES] = "\n.Ss rate\n",
};

static void page_read(struct text *page)
{
	struct file_error error;

	ck_assert_msg(file_read("man/parterre-plot.5", 1 << 20, page, &error), "%s",
		error.sentence);
}

/* The item of an attribute: from its ".It Ic keyword " to the next one's. New text. */
static void item_find(const struct text *page, enum attribute a, struct text *item)
{
	const struct attribute_row *row = attribute_row(a);
	struct text start = TEXT_EMPTY;
	const char *at = strstr(page->bytes, headings[attribute_block(a)]), *end;

	ck_assert_msg(at != NULL, "no heading for the block of %s", row->keyword);
	text_print(&start, "\n.It Ic %s ", row->keyword);
	at = strstr(at + 1, start.bytes);
	/* Of two with one keyword the second says words. */
	if (at && a > 0 && strcmp(attribute_row(a - 1)->keyword, row->keyword) == 0)
		at = strstr(at + 1, start.bytes);
	ck_assert_msg(at != NULL, "the manual does not list %s", row->keyword);
	end = strstr(at + 1, "\n.It ");
	text_add_bytes(item, at, end ? (size_t)(end - at) : strlen(at));
	text_fini(&start);
}

START_TEST(every_attribute_is_in_the_manual_under_its_block)
{
	const struct attribute_row *row = attribute_row((enum attribute)_i);
	struct text page = TEXT_EMPTY, item = TEXT_EMPTY;

	page_read(&page);
	item_find(&page, (enum attribute)_i, &item);
	for (int i = 0; row->rule.words && row->rule.words[i]; i++)
		ck_assert_msg(strstr(item.bytes, row->rule.words[i]) != NULL,
			"the manual does not say that %s may be %s", row->keyword,
			row->rule.words[i]);
	text_fini(&item);
	text_fini(&page);
}
END_TEST

/* In imperial and metric plots. */
START_TEST(a_default_measure_is_in_the_manual_as_the_format_spells_it)
{
	enum attribute a = (enum attribute)_i;
	const struct attribute_row *row = attribute_row(a);
	struct text page = TEXT_EMPTY, item = TEXT_EMPTY;

	page_read(&page);
	item_find(&page, a, &item);
	for (enum units units = UNITS_IMPERIAL; units <= UNITS_METRIC; units++) {
		const struct value *preset = attribute_preset(a, units);
		struct text value = TEXT_EMPTY;

		if (!preset->set || (row->rule.kind == VALUE_LENGTH && !preset->as.length) ||
			(row->rule.kind != VALUE_LENGTH && !attribute_row(a)->metric.set))
			continue;
		value_write(&value, &row->rule, preset, units);
		ck_assert_msg(strstr(item.bytes, value.bytes) != NULL,
			"the manual does not give %s as a default of %s", value.bytes,
			row->keyword);
		text_fini(&value);
	}
	text_fini(&item);
	text_fini(&page);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("manual words");
	TCase *table = suite_case(suite, "table");

	tcase_add_loop_test(table, every_attribute_is_in_the_manual_under_its_block, 0, ATTRIBUTES);
	tcase_add_loop_test(table, a_default_measure_is_in_the_manual_as_the_format_spells_it, 0,
		ATTRIBUTES);
	return suite;
}
