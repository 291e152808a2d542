#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

static void print_label(const struct report *report, const char *label, const char *words)
{
	struct text line = TEXT_EMPTY;

	text_print(&line, "%s%s", label, words);
	page_paragraph(report->out, 3, 5, line.bytes);
	text_fini(&line);
}

/* "Stone for the base 2.31 cu yd, Edging 12." */
static void print_quantities(const struct report *report, const struct work_step *step)
{
	struct text line = TEXT_EMPTY;

	for (int i = 0; i < step->item_count; i++) {
		const struct item *item = &report->takeoff->items[step->items[i]];

		text_print(&line, "%s%s%c", i ? ", " : "", item->label, PAGE_TIE);
		if (!size_is_none(&item->block)) {
			word_size(&line, report, &item->block);
			text_print(&line, ":%c", PAGE_TIE);
		}
		word_amount(&line, report, item, item->order);
	}
	if (step->barrows > 0) {
		text_add(&line, "; ");
		word_count(&line, step->barrows, "barrow load", "barrow loads");
	}
	text_add(&line, ".");
	if (step->item_count > 0)
		print_label(report, "Takes: ", line.bytes);
	text_fini(&line);
}

static void print_hours(const struct report *report, const struct work_step *step)
{
	struct text line = TEXT_EMPTY;

	if (step->rate) {
		show_decimal(&line, step->hours, 1);
		text_print(&line, ", at the rate for %s.", step->rate);
	} else {
		text_add(&line, "no published rate.");
	}
	print_label(report, "Hours: ", line.bytes);
	text_fini(&line);
}

static void print_step(const struct report *report, int number, const struct work_step *step)
{
	struct text title = TEXT_EMPTY;

	text_print(&title, "%2d %s", number, step->title);
	page_paragraph(report->out, 0, 3, title.bytes);
	text_fini(&title);
	page_paragraph(report->out, 3, 5, step->doing);
	print_quantities(report, step);
	print_label(report, "Tools: ", step->tools);
	print_hours(report, step);
	if (step->caution)
		print_label(report, "Mind: ", step->caution);
}

void print_work(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	struct text source = TEXT_EMPTY;

	page_heading(report->out, takeoff->complete ? "Order of work" : "Order of work (INCOMPLETE)");
	for (int i = 0; i < takeoff->work_count; i++)
		print_step(report, i + 1, &takeoff->work[i]);
	text_print(&source, "Hours are of one person, by %s; where none is named nobody's published rate is "
		"known here. Your own pace differs: time the first barrows.", work_source());
	page_note(report->out, source.bytes);
	text_fini(&source);
}
