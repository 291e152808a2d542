#include "report/text/print.h"
#include "report/words/words.h"
#include "base/show.h"

#include <string.h>

enum { PRINTED_OF_A_CODE = 20 };

/* "B1 at 3,3, side 2". */
static void word_place(struct text *text, const struct report *report, const struct snag *snag)
{
	size_t from = text->length;

	if (snag->region != NO_REGION) {
		word_region(text, report, snag->region);
		text_add(text, " at ");
	}
	text_print(text, "%d,%d", snag->cell.x, snag->cell.y);
	if (snag->side >= 0 && snag->loop > 0)
		text_print(text, " hole %d", snag->loop);
	if (snag->side >= 0)
		text_print(text, " side %d", snag->side + 1);
	page_tie(text, from);
}

/* Prints the first of the snags and those behind it that say the same; returns how many. */
static int print_alike(const struct report *report, const struct snag *snags, int count)
{
	struct text line = TEXT_EMPTY;
	int alike;

	word_place(&line, report, &snags[0]);
	for (alike = 1; alike < count && strcmp(snags[alike].text, snags[0].text) == 0; alike++) {
		text_add(&line, "; ");
		word_place(&line, report, &snags[alike]);
	}
	text_print(&line, ": %s", snags[0].text);
	page_paragraph(report->out, 2, 4, line.bytes);
	text_fini(&line);
	return alike;
}

/* All snags of one code: the first of them, how many more, the rule. */
static void print_code(const struct report *report, const struct snag *snags, int count)
{
	const struct snag_rule *rule = snag_rule(snags->code);
	int printed = count < PRINTED_OF_A_CODE ? count : PRINTED_OF_A_CODE;
	struct text line = TEXT_EMPTY;

	text_print(&line, "%s, ", rule->word);
	word_count(&line, count, "place", "places");
	text_print(&line, ". %s", rule->source);
	text_add(report->out, "\n");
	page_paragraph(report->out, 0, 2, line.bytes);
	for (int i = 0; i < printed;)
		i += print_alike(report, &snags[i], printed - i);
	if (count > PRINTED_OF_A_CODE) {
		text_clear(&line);
		text_add(&line, "and ");
		show_count(&line, count - PRINTED_OF_A_CODE);
		text_add(&line, " more");
		page_paragraph(report->out, 2, 4, line.bytes);
	}
	text_fini(&line);
}

void print_snags(const struct report *report)
{
	const struct takeoff *takeoff = report->takeoff;
	int next;

	page_heading(report->out, "Snags");
	if (takeoff->snag_count == 0)
		text_add(report->out, "None found.\n");
	else
		text_add(report->out, "What would not work on the ground, with its place.\n");
	for (int i = 0; i < takeoff->snag_count; i = next) {
		const struct snag *snag = &takeoff->snags[i];

		for (next = i + 1; next < takeoff->snag_count;)
			if (takeoff->snags[next].code == snag->code)
				next++;
			else
				break;
		print_code(report, snag, next - i);
	}
}
