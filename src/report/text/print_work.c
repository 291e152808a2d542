#include "report/text/print.h"

/* "Stone for the base 2.31 cu yd, Edging 12." */
static void print_quantities(const struct report *report, const struct work_step *step)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < step->item_count; i++) {
		const struct item *item = &report->takeoff->items.list[step->items[i]];
		const char *size = item_size(report, item);

		text_print(&words, "%s%s%c", i ? ", " : "", item_label(report, item), PAGE_TIE);
		if (*size)
			text_print(&words, "%s:%c", size, PAGE_TIE);
		text_add(&words, item_amount(report, item, item->order));
	}
	if (step->barrows > 0)
		text_print(&words, "; %s",
			word_count(report, step->barrows, "barrow load", "barrow loads"));
	if (step->item_count > 0)
		print_lines(report, 3, 5, "Takes: %s.", words.bytes);
	text_fini(&words);
}

static void print_step(const struct report *report, int number, const struct work_step *step)
{
	print_lines(report, 0, 3, "%2d %s", number, step->title);
	print_lines(report, 3, 5, "%s", step->doing);
	print_quantities(report, step);
	print_lines(report, 3, 5, "Tools: %s", step->tools);
	if (step->rate)
		print_lines(report, 3, 5, "Hours: %s, at the rate for %s.",
			plain_decimal(report, step->hours, 1), step->rate);
	else
		print_lines(report, 3, 5, "Hours: no published rate.");
	if (step->caution)
		print_lines(report, 3, 5, "Mind: %s", step->caution);
}

void print_work(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;

	print_heading(report, "Order of work", takeoff->complete);
	for (int i = 0; i < takeoff->work.count; i++)
		print_step(report, i + 1, &takeoff->work.list[i]);
	print_note(report, "Hours are of one person, by %s; where none is given, no published "
		"rate is known. Your own pace differs: time the first barrows.",
		work_source());
}
