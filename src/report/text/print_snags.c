#include "report/text/print.h"
#include "base/stop.h"
#include "base/number.h"
#include "report/words/snag_words.h"

enum { PRINTED_OF_A_CODE = 20 };

/* "B1 at 3,3, side 2". */
static const char *place_words(const struct report *report, const struct snag *snag)
{
	const char *hole = snag->side >= 0 && snag->loop > 0 ? say(report, " hole %d", snag->loop) :
		"";
	const char *side = snag->side >= 0 ? say(report, " side %d", snag->side + 1) : "";

	return tied(report, say(report, "%s%s%d,%d%s%s", plain_region(report, snag->region),
		snag->region == NO_REGION ? "" : " at ", snag->cell.x, snag->cell.y, hole, side));
}

/* Prints the first of the snags and those after it with the same sentence; returns how many. */
static size_t print_alike_snags(const struct report *report, const struct snag *snags, size_t count)
{
	struct text places = TEXT_EMPTY;
	size_t alike;

	text_add(&places, place_words(report, &snags[0]));
	for (alike = 1; alike < count && snag_is_alike(&snags[alike], &snags[0]); alike++)
		text_print(&places, "; %s", place_words(report, &snags[alike]));
	print_lines(report, 2, 4, "%s: %s", places.bytes, snag_sentence(report, &snags[0]));
	text_fini(&places);
	return alike;
}

/* All snags of one code: the first of them, how many more, the rule. */
static void print_code(const struct report *report, const struct snag *snags, size_t count)
{
	size_t printed = (size_t)nm_least((int64_t)count, PRINTED_OF_A_CODE);

	print_blank(report);
	print_lines(report, 0, 2, "%s, %s. %s", snag_word(snags->code),
		word_count(report, (int64_t)count, "place", "places"), snag_source(snags->code));
	for (size_t i = 0; i < printed;)
		i += print_alike_snags(report, &snags[i], printed - i);
	if (count > printed)
		print_lines(report, 2, 4, "and %s more",
			plain_count(report, (int64_t)(count - printed)));
}

void print_snags(const struct report *report)
{
	const struct snag_list *snags = &report->takeoff->snags;

	page_heading(report->out, "Snags");
	sink_add(report->out, snags->count == 0 ? "None found.\n" :
		"What would not work on the ground, with its place.\n");
	for (size_t i = 0, next; i < snags->count && !stop_asked(); i = next) {
		next = snag_next_code(snags, i);
		print_code(report, &snags->list[i], next - i);
	}
}
