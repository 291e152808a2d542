#include "report/text/print.h"
#include "base/stop.h"
#include "report/drawing/fence_lines.h"

/* ---- Lines ----------------------------------------------------------------------------------- */

void print_services(const struct report *report)
{
	const struct service_lines *lines = &report->takeoff->services;

	print_rows(report, &service_line_table, lines->list, lines->count, 0, NULL);
	if (lines->existing > 0)
		print_explained(report, "Lines that are there are drawn as somebody told: have "
			"them marked, and let the marks go before the plan. Depths change along a "
			"line. Private lines nobody marks but a private locator.");
}

/* ---- By hand --------------------------------------------------------------------------------- */

const char *span_words(const struct report *report, nm from, nm to)
{
	return from == to ? word_length(report, from) :
		say(report, "%s to %s", word_length(report, from), word_length(report, to));
}

/* "P1 path"; "trench of Lamp cable"; "other ground, graded". */
static const char *dig_place(const struct report *report, const struct hand_dig *dig)
{
	if (dig->line)
		return say(report, "%s of %s", dig->words, dig->line);
	if (dig->region == NO_REGION)
		return dig->words;
	return say(report, "%s %s", plain_named_region(report, dig->region), dig->words);
}

/* "Rose at 9 ft 6 in across, 2 ft 6 in down; ...". */
static const char *plants_words(const struct report *report, const struct hand *hand)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < hand->plant_count && i < NAMED_MOST; i++)
		text_print(&words, "%s%s at %s across, %s down", i ? "; " : "",
			hand->plants[i].name, word_length(report, hand->plants[i].at.x),
			word_length(report, hand->plants[i].at.y));
	if (hand->plant_count > NAMED_MOST)
		text_print(&words, "; and %s more",
			plain_count(report, hand->plant_count - NAMED_MOST));
	return say_text(report, &words);
}

static void print_digs(const struct report *report, const struct hand *hand)
{
	static const struct table_column columns[] = {
		{ "What", COLUMN_WRAPS }, { "Area", COLUMN_RIGHT }, { "Across", COLUMN_WRAPS },
		{ "Down", COLUMN_WRAPS } };
	struct hand_table table = hand_table(columns, 4, 2);

	for (int i = 0; i < hand->dig_count && i < NAMED_MOST && !stop_asked(); i++) {
		const struct hand_dig *dig = &hand->digs[i];

		TABLE_ROW(&table, dig_place(report, dig), word_area(report, dig->area),
			span_words(report, dig->from.x, dig->to.x),
			span_words(report, dig->from.y, dig->to.y));
	}
	if (hand->dig_count > NAMED_MOST)
		hand_table_across(&table, say(report, "and %s more.",
			plain_count(report, hand->dig_count - NAMED_MOST)));
	hand_table_print(&table, report->out);
}

/* "Post holes 3, 4 and 2.1". */
static const char *posts_words(const struct report *report, const struct hand *hand)
{
	struct text words = TEXT_EMPTY;

	for (int i = 0; i < hand->post_count && i < NAMED_MOST; i++) {
		char name[FENCE_NAME_MOST];

		fence_post_name(hand->posts[i].fence, (int)hand->posts[i].number - 1, name);
		text_print(&words, "%s%s", i == 0 ? "" : i + 1 == hand->post_count ? " and " :
			", ", name);
	}
	if (hand->post_count > NAMED_MOST)
		text_print(&words, " and %s more",
			plain_count(report, hand->post_count - NAMED_MOST));
	return say_text(report, &words);
}

/* Holes, plants, spikes and pins. */
static void print_points(const struct report *report, const struct hand *hand)
{
	struct text words = TEXT_EMPTY;

	if (hand->post_count > 0)
		text_add_sentence(&words, "Post %s %s, never by auger.",
			hand->post_count == 1 ? "hole" : "holes", posts_words(report, hand));
	if (hand->plant_count > 0)
		text_add_sentence(&words, "Planting %s: %s.",
			hand->plant_count == 1 ? "hole" : "holes", plants_words(report, hand));
	if (hand->spikes > 0)
		text_add_sentence(&words, "%s of edging.",
			word_count(report, hand->spikes, "spike", "spikes"));
	if (hand->fabric > 0)
		text_add_sentence(&words, "The pins of %s of fabric.",
			word_area(report, hand->fabric));
	if (words.length)
		print_lines(report, 2, 4, "%s", words.bytes);
	text_fini(&words);
}

/* "from 24 ft across, 0 in down, to 12 ft down, to 26 ft across": each leg is level or upright. */
static const char *route_words(const struct report *report, const struct service *service)
{
	nm cell = plot_cell(report->plot);
	struct text words = TEXT_EMPTY;
	int shown = 0;

	for (size_t i = 0; i < service->routes.count; i++) {
		const struct route *route = &service->routes.items[i];

		for (int j = 0; j < route->count && shown <= NAMED_MOST; j++, shown++) {
			struct place at = route->points[j];
			bool is_across = j > 0 && at.y == route->points[j - 1].y;

			if (shown == NAMED_MOST)
				text_add(&words, ", and on as it is drawn");
			else if (j == 0)
				text_print(&words, "%sfrom %s", i ? "; " : "",
					plain_place(report, at));
			else
				text_print(&words, ", to %s %s", word_length(report,
					(is_across ? at.x : at.y) * cell),
					is_across ? "across" : "down");
		}
	}
	return say_text(report, &words);
}

/* "5 ft round 24 ft across, 10 ft down"; "1 ft to 3 ft across, 13 ft to 15 ft down". */
static const char *kept_words(const struct report *report, const struct kept *kept)
{
	if (kept->radius > 0)
		return say(report, "%s round %s", word_length(report, kept->radius),
			plain_place(report, kept->obstacle->at));
	return say(report, "%s across, %s down", span_words(report, kept->from.x, kept->to.x),
		span_words(report, kept->from.y, kept->to.y));
}

static void print_hand(const struct report *report, const char *title, const struct hand *hand)
{
	bool is_any = hand->dig_count + hand->post_count + hand->plant_count > 0 ||
		hand->spikes > 0;

	print_blank(report);
	print_lines(report, 0, 2, "%s: %s", title, is_any ? say(report, "%s of ground, of which:",
		word_area(report, hand->area)) : "nothing is worked there.");
	print_digs(report, hand);
	print_points(report, hand);
}

void print_by_hand(const struct report *report)
{
	const struct service_lines *lines = &report->takeoff->services;
	nm near = block_length(report->takeoff->allow, ALLOW_SERVICE_NEAR);

	if (lines->existing + lines->kept_count == 0)
		return;
	print_section(report, "By hand");
	print_lines(report, 0, 0, "By hand, with care: whatever comes nearer than %s to a line "
		"that is there, and what is within things kept, by whole cells of the plan (/ on "
		"it).%s", word_inches(report, near), report->is_whole ? "" : " Common Ground "
		"Alliance, Best Practices, 5.19, asks for 18 in past the line, the law of some "
		"states for 24 in, both as quoted; yours goes first.");
	for (int i = 0; i < lines->count && !stop_asked(); i++)
		if (lines->list[i].state == LINE_EXISTING)
			print_hand(report, say(report, "Near %s (%s), %s", lines->list[i].name,
				line_kind_words[lines->list[i].kind].key,
				route_words(report, lines->list[i].service)),
				&lines->list[i].hand);
	for (int i = 0; i < lines->kept_count && !stop_asked(); i++)
		print_hand(report, say(report, "Within %s, %s", lines->kept[i].name,
			kept_words(report, &lines->kept[i])), &lines->kept[i].hand);
}

/* ---- Lines to lay ---------------------------------------------------------------------------- */

/* "3 ft to 8 ft across, 4 ft down". */
static const char *sleeve_place(const struct report *report, const struct sleeve *sleeve)
{
	return say(report, "%s across, %s down",
		span_words(report, sleeve->from.x, sleeve->to.x),
		span_words(report, sleeve->from.y, sleeve->to.y));
}

/* "2 sleeves: 2 ft (3 ft to 5 ft across, 4 ft down); ...", each with its place; what to say where
 * there is none. */
static const char *sleeves_words(const struct report *report, const struct sleeve *sleeves,
	int count)
{
	struct text words = TEXT_EMPTY;

	if (count == 0)
		return "It runs under nothing that is built.";
	text_print(&words, "%s: ", word_count(report, count, "sleeve", "sleeves"));
	for (int i = 0; i < count && i < NAMED_MOST; i++)
		text_print(&words, "%s%s (%s)", i ? "; " : "",
			word_length(report, sleeves[i].length),
			sleeve_place(report, &sleeves[i]));
	if (count > NAMED_MOST)
		text_print(&words, "; and %s more",
			plain_count(report, count - NAMED_MOST));
	text_add(&words, ".");
	return say_text(report, &words);
}

static void print_line(const struct report *report, const struct service_line *line)
{
	print_lines(report, 0, 2, "%s (%s), %s: trench %s long, %s wide and %s deep, %s dug and "
		"put back; the line's top %s down. %s", line->name, line_kind_words[line->kind].key,
		route_words(report, line->service), word_length(report, line->length),
		word_inches(report, line->width), word_inches(report, line->trench_depth),
		word_volume(report, line->trench),
		word_inches(report, line->depth), sleeves_words(report, line->sleeves,
		line->sleeve_count));
}

static bool has_power(const struct service_lines *lines)
{
	for (int i = 0; i < lines->count; i++)
		if (lines->list[i].state == LINE_TO_LAY && lines->list[i].kind == SERVICE_POWER)
			return true;
	return false;
}

static void print_depths(const struct report *report, const struct service_lines *lines)
{
	const char *power = !has_power(lines) ? "" : report->units == UNITS_IMPERIAL ?
		" Power: NFPA 70, National Electrical Code, 2020, Table 300.5, as quoted: direct "
		"burial cable 24 in, PVC conduit 18 in, 120 V 20 A behind a ground-fault "
		"interrupter 12 in, low voltage 6 in." :
		" Power: NFPA 70, National Electrical Code, 2020, Table 300.5, as quoted: direct "
		"burial cable 600 mm, PVC conduit 450 mm, 120 V 20 A behind a ground-fault "
		"interrupter 300 mm, low voltage 150 mm.";

	print_note(report, "How deep lines lie, in what, and who may lay them is a matter of local "
		"code and licensed practice.%s Other depths that the plot does not set: common "
		"practice, no published source. %sLengths are along the line; a sleeve goes on %s "
		"past either side of what it runs under, but not past where the line turns or "
		"ends, and where two would meet there is one.", power,
		report->takeoff->levelling.is_told ? "Depths are below the finished ground. " : "",
		word_inches(report, block_length(report->takeoff->allow, ALLOW_SLEEVE_PAST)));
}

void print_trenches(const struct report *report)
{
	const struct service_lines *lines = &report->takeoff->services;

	if (lines->to_lay == 0)
		return;
	print_section(report, "To lay");
	for (int i = 0; i < lines->count && !stop_asked(); i++)
		if (lines->list[i].state == LINE_TO_LAY)
			print_line(report, &lines->list[i]);
	print_depths(report, lines);
}
