/* The header: from the tap to the beds that are watered. */
#include "report/text/print.h"

static void print_unreached(const struct report *report, const struct watering *watering)
{
	struct text words = TEXT_EMPTY;
	int count = 0;

	for (int i = 0; i < watering->count; i++)
		if (!watering->list[i].is_reached && count++ < NAMED_MOST)
			text_print(&words, "%s%s", words.length ? ", " : "",
				plain_region(report, watering->list[i].region));
	if (count > 0)
		print_lines(report, 2, 4, "NO WAY TO %s%s: no tube to there is counted.",
			words.bytes, count > NAMED_MOST ? " and others" : "");
	text_fini(&words);
}

static void print_trench(const struct report *report, const struct watering *watering)
{
	print_lines(report, 0, 2, "From the tap at %s a trench of %s goes to the beds, %s wide and "
		"down to %s below the finished ground, %s dug and put back, round what is in the "
		"way. Each zone has a tube of its own in it, from its valve at the tap: with what "
		"lies within beds, %s of header tube.",
		plain_place(report, report->plot->details.around.tap),
		word_length(report, watering->trench), word_inches(report, watering->trench_width),
		word_inches(report, watering->trench_depth),
		word_volume(report, watering->trench_dug), word_length(report, watering->header));
	print_unreached(report, watering);
	print_lines(report, 2, 4, "BEFORE THE BASE IS LAID, under what is built: %s",
		watering->sleeve_count == 0 ? "nothing." :
		sleeves_words(report, watering->sleeves, watering->sleeve_count));
	if (watering->walls > 0)
		print_lines(report, 2, 4, "And a sleeve under the wall of each raised bed that it "
			"comes to, one for each tube: %s. In all %s of sleeve.",
			word_count(report, watering->walls, "sleeve", "sleeves"),
			word_length(report, watering->sleeve_length));
}

void print_header(const struct report *report)
{
	const struct watering *watering = &report->takeoff->watering;

	if (watering->count == 0)
		return;
	print_section(report, "From the tap");
	if (watering->has_tap)
		print_trench(report, watering);
	else
		print_lines(report, 0, 2, "The plot does not say where water comes from (tap): no "
			"tube from there is counted, nor any sleeve. Say it before the base of "
			"paths is laid. Within beds lie %s of header tube.",
			word_length(report, watering->header));
	print_ordered(report, SECTION_WATER);
	print_explained(report, "At the tap, one after the other: backflow preventer, filter, "
		"pressure regulator, the timer and a valve for each zone. A tee for each line, and "
		"for each further bed of a zone; an end cap for each line, taken off to flush it. "
		"Common practice, no published source. What connects to drinking water, who may "
		"fit it and how deep tubes lie where it freezes is a matter of local code and "
		"licensed practice; drain all of it before frost.");
}
