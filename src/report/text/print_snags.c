#include "report/text/print.h"
#include "base/stop.h"
#include "report/words/snag_lines.h"
#include "report/words/snag_words.h"
#include "report/words/sun_words.h"

/* "B1 at 3 ft, 3 ft side 2 and 3 images". */
static const char *place_words(const struct report *report, const struct snag_line *line)
{
	const struct snag *snag = line->snag;
	const char *hole = snag->side >= 0 && snag->loop > 0 ? say(report, " hole %d", snag->loop) :
		"";
	const char *side = snag->side >= 0 ? say(report, " side %d", snag->side + 1) : "";

	return tied(report, say(report, "%s%sat %s%s%s%s", plain_region(report, snag->region),
		snag->region == NO_REGION ? "" : " ", plain_corner(report, snag->cell), hole, side,
		snag_images_words(report, line)));
}

/* Prints the first of the lines and those after it with the same sentence and cure; returns how
 * many. */
static int print_alike_snags(const struct report *report, const struct snag_line *lines, int count)
{
	const struct snag *snag = lines[0].snag;
	struct text places = TEXT_EMPTY;
	int alike;

	text_add(&places, place_words(report, &lines[0]));
	for (alike = 1; alike < count && snag_is_alike(lines[alike].snag, snag) &&
		snag_has_same_card(report, lines[alike].snag, snag); alike++)
		text_print(&places, "; %s", place_words(report, &lines[alike]));
	print_lines(report, 2, 4, "%s: %s %s", places.bytes, snag_sentence(report, snag),
		snag_cure_sentence(report, snag));
	text_fini(&places);
	return alike;
}

/* All snags of one code: the first of them, how many more, the rule. */
static void print_code(const struct report *report, const struct snag *snags, size_t count)
{
	struct snag_lines lines;

	snag_lines_find(&lines, report, snags, count);
	print_lines(report, 0, 2, "%s, %s. %s", snag_heading(report, snags->code),
		word_count(report, (int64_t)count, "place", "places"), snag_source(snags->code));
	for (int i = 0; i < lines.count;)
		i += print_alike_snags(report, &lines.list[i], lines.count - i);
	if (lines.more > 0)
		print_lines(report, 2, 4, "and %s more", plain_count(report, lines.more));
}

static void print_codes(const struct report *report, const struct snag_list *snags)
{
	print_note(report, "Snags: %s, to be read before anything is bought.",
		word_count(report, (int64_t)snags->count, "place", "places"));
	for (size_t i = 0, next; i < snags->count && !stop_asked(); i = next) {
		next = snag_next_code(snags, i);
		print_code(report, &snags->list[i], next - i);
	}
}

void print_snags(const struct report *report)
{
	const struct snag_list *snags = &report->takeoff->snags;
	const char *unchecked = sun_unchecked_words(report->takeoff);

	if (snags->count == 0)
		print_note(report, "Snags: none found.");
	else
		print_codes(report, snags);
	if (unchecked)
		print_lines(report, 0, 0, "%s", unchecked);
}
