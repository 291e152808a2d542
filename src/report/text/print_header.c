/* The header: from the tap to the beds that are watered. */
#include "report/text/print.h"
#include "base/stop.h"

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

static void add_sleeve(struct hand_table *table, const struct report *report,
	const struct header_sleeve *sleeve)
{
	TABLE_ROW(table, plain_count(report, sleeve->sleeves), sleeve->region == NO_REGION ?
		"what is built" : say(report, "wall of %s", plain_region(report, sleeve->region)),
		span_words(report, sleeve->place.from.x, sleeve->place.to.x),
		span_words(report, sleeve->place.from.y, sleeve->place.to.y),
		word_length(report, sleeve->place.length),
		plain_count(report, sleeve->tubes));
}

static void print_sleeves(const struct report *report, const struct watering *watering)
{
	static const struct table_column columns[] = { { "Sleeves", COLUMN_RIGHT },
		{ "Under", COLUMN_LEFT }, { "Across", COLUMN_WRAPS }, { "Down", COLUMN_WRAPS },
		{ "Long", COLUMN_RIGHT }, { "Tubes", COLUMN_RIGHT } };
	struct hand_table table = hand_table(columns, 6, 2);
	int count = watering->header_sleeve_count;

	print_lines(report, 2, 4, "BEFORE THE BASE IS LAID, under what is built and under walls: "
		"%s", count == 0 ? "nothing." : say(report, "%s of sleeve.",
		word_length(report, watering->sleeve_length)));
	for (int i = 0; i < count && i < NAMED_MOST && !stop_asked(); i++)
		add_sleeve(&table, report, &watering->header_sleeves[i]);
	if (count > NAMED_MOST)
		hand_table_across(&table, say(report, "and %s more such rows.",
			plain_count(report, count - NAMED_MOST)));
	hand_table_print(&table, report->out);
	if (count > 0)
		print_explained(report, "A sleeve goes on %s past either side of what it runs "
			"under, but not past where the trench turns or ends, and where two would "
			"meet there is one. Under a wall it goes on so far past the wall's base. "
			"Outside it is shorter where a sleeve of the trench already comes up to "
			"the wall. Tubes: in each, where most lie side by side. Choose a sleeve "
			"twice as wide inside as its tubes together (common practice, no published "
			"source).",
			word_inches(report, block_length(report->takeoff->allow,
			ALLOW_SLEEVE_PAST)));
}

static bool is_any_reached(const struct watering *watering)
{
	for (int i = 0; i < watering->count; i++)
		if (watering->list[i].is_reached)
			return true;
	return false;
}

static void print_trench(const struct report *report, const struct watering *watering)
{
	struct place tap = report->plot->details.around.tap;
	const char *place = say(report, "%s across and %s down", plain_sides(report, tap.x),
		plain_sides(report, tap.y));

	if (watering->trench > 0)
		print_lines(report, 0, 2, "From the tap, %s, a trench of %s goes to the beds: %s "
			"wide and down to %s below the finished ground, %s dug and put back, round "
			"what is in the way. Each zone has a tube of its own in it, from its valve "
			"at the tap: with what lies within beds, %s of header tube as laid.",
			place, word_length(report, watering->trench),
			word_inches(report, watering->trench_width),
			word_inches(report, watering->trench_depth),
			word_volume(report, watering->trench_dug),
			word_length(report, watering->header));
	else if (is_any_reached(watering))
		print_lines(report, 0, 2, "The tap, %s, stands at what it waters: no trench. Each "
			"zone has a tube of its own, from its valve at the tap: %s of header tube "
			"as laid.", place, word_length(report, watering->header));
	else
		print_lines(report, 0, 2, "From the tap, %s, no trench is counted. Within beds lie "
			"%s of header tube as laid.", place, word_length(report, watering->header));
	print_unreached(report, watering);
	print_sleeves(report, watering);
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
			"paths is laid. Within beds lie %s of header tube as laid.",
			word_length(report, watering->header));
	print_ordered(report, SECTION_WATER);
	print_explained(report, "At the tap, one after the other: backflow preventer, filter, "
		"pressure regulator, the timer and a valve for each zone. A tee for each line, for "
		"each branch within a bed and for each further bed of a zone; an end cap for each "
		"line, taken off to flush it; one more of both for a line that the header crosses. "
		"Common practice, no published source. What connects to drinking water, who may "
		"fit it and how deep tubes lie where it freezes is a matter of local code and "
		"licensed practice; drain all of it before frost.");
}
