/* What figures rest on is said: every attribute of allow, of the legend and of a fence is set to
 * another value than its default, on a plot that has something of everything. Where a figure of
 * the text or of JSON moves, the list of what is assumed has its label and the value; and where
 * an attribute is said to matter, one does move. */
#include "support/book.h"
#include "support/garden.h"
#include "support/runner.h"
#include "plot/format/format.h"
#include "report/json/json.h"
#include "report/text/print.h"

#include <string.h>

static const char plot_words[] =
	"parterre-plot 1\n"
	"units imperial\n"
	"cell 1 ft\n"
	"bed b \"Raised\"\n"
	"bed c \"Tall\"\n"
	"bed d \"Dug over\"\n"
	"bed e \"Replaced\"\n"
	"path p \"Fines\"\n"
	"path q \"Clean\"\n"
	"lawn l \"Turf\"\n"
	"lawn m \"Seed\"\n"
	"fixture S \"Sundial\"\n"
	"ground 35 x 12\n"
	"  bbbbbbbbb.ppppqqqlllllmmmmmdddd.eee\n"
	"  bbbbbbbbb.ppppqqqlllllmmmmmdddd.eee\n"
	"  bbbbbbbbb.ppppqqqlllllmmmmmdddd.eee\n"
	"  bbbbbbbbb.ppppqqqlllllmmmmmdddd.eee\n"
	"  bbbbbbbbb.ppppSSqlllllmmmmmdddd.eee\n"
	"  ..........ppppSSqlllllmmmmm........\n"
	"  ccccccl...ppppqqqlllllmmmmm........\n"
	"  cccccc....ppppqqqlllllmmmmm........\n"
	"  cccccc....ppppqqqlllllmmmmm........\n"
	"  cccccc....ppppqqqlllllmmmmm........\n"
	"  ..........ppppqqqlllllmmmmm........\n"
	"  ..........ppppqqqlllllmmmmm........\n"
	"fence \"Pickets\"\n"
	"  run 0,0 35,0 35,12\n"
	"  run 31,7 31,11\n"
	"  gate 10,0 14,0\n"
	"  gate 20,0 29,0\n"
	"finish 0,0 0 in\n"
	"fall 3 % away\n"
	"house \"Number 4\"\n"
	"  from -12,0 to -1,12\n"
	"house \"Home\"\n"
	"  from 0,-9 to 35,-1\n"
	"service gas \"Gas\" existing\n"
	"  line 29,0 29,6 34,6\n"
	"service power \"Lamp\" to-lay\n"
	"  line 8,6 19,6\n"
	"plant t \"Teasel\"\n"
	"  spacing 6 in\n"
	"  height 20 ft\n"
	"  drift c whole\n";

/* What the entries say before an attribute is tried. */
static const struct { char letter; enum attribute attribute; const char *value; } settings[] = {
	{ 'c', BED_COURSES, "5" }, { 'c', BED_CAP, "16 in x 8 in x 2 in" },
	{ 'c', BED_INSIDE, "base" }, { 'd', BED_BUILD, "level" }, { 'e', BED_BUILD, "level" },
	{ 'e', BED_REPLACE, "yes" }, { 'q', PATH_STONE, "clean" }, { 'm', LAWN_COVER, "seed" },
	{ 0, ALLOW_TOPSOIL, "1 1/2 in" }, { 0, ALLOW_FABRIC_LENGTH, "20 ft" },
	{ 'S', FIXTURE_HEIGHT, "5 ft" }, { 'd', BED_WATER, "drip" },
};

static const char book_words[] =
	"'suppliers': [ { 'name': 'Yard', 'delivery': 40 } ], 'goods': ["
	"{ 'item': 'soil.topsoil', 'packs': [ { 'pack': 'bulk', 'size': '1 cu yd', 'price': 30,"
	" 'supplier': 'Yard' } ] },"
	"{ 'item': 'spoil', 'packs': [ { 'pack': 'bulk', 'size': '1 cu yd', 'price': 20,"
	" 'supplier': 'Yard' } ] },"
	"{ 'item': 'fence.post', 'packs': [ { 'pack': 'piece', 'size': 1, 'price': 9 } ] } ]";

/* Values under which a figure moves, where the default changed a little moves none. */
static const struct { enum attribute attribute; const char *value; } usual[] = {
	{ ALLOW_SHORTEST, "7 in" }, { ALLOW_INSIDE, "38 in" }, { ALLOW_HELD, "left,right,top" },
	{ ALLOW_FROST, "40 in" }, { ALLOW_FABRIC_WIDTH, "4 ft" }, { ALLOW_FABRIC_LENGTH, "30 ft" },
	{ ALLOW_FABRIC_OFFCUT, "10 ft" }, { ALLOW_POST_STOCK, "15 in" },
	{ ALLOW_TRUCK_STEP, "3 cu yd" },
	{ ALLOW_PICKUP_WEIGHT, "500 lb" }, { ALLOW_TRUCK_WEIGHT, "2000 lb" },
	{ ALLOW_TRUCK_VOLUME, "2 cu yd" }, { BED_CAP, "12 in x 8 in x 3 in" },
	{ BED_MIX, "topsoil 3, compost 1, sharp-sand 1" }, { FENCE_LEAF, "9 ft" },
	{ FENCE_HOLE, "14 in" }, { FENCE_DEPTH, "3 ft" }, { FENCE_INSET, "8 in" },
	{ BED_EMBED, "4 in" }, { ALLOW_TURF_SPARE, "7 %" }, { ALLOW_SETTLEMENT, "12 %" },
	{ ALLOW_SOIL_LEAST, "3 ft" }, { ALLOW_FLOOR_STONE, "1 %" }, { ALLOW_LAWN_SOIL, "1 ft" },
	{ ALLOW_WALL_FOOTING, "30 in" },
	{ BED_DRIP_ROW, "2 ft" }, { BED_DRIP_EMITTER, "2 ft" },
	{ ALLOW_LINE_LIMIT, "4 ft" }, { ALLOW_LINE_FLOW, "2 gal/h" },
	{ ALLOW_WATER_JANUARY, "2 in" }, { ALLOW_WATER_FEBRUARY, "2 in" },
	{ ALLOW_WATER_MARCH, "2 in" }, { ALLOW_WATER_APRIL, "2 in" },
	{ ALLOW_WATER_MAY, "2 in" }, { ALLOW_WATER_JUNE, "2 in" },
	{ ALLOW_WATER_JULY, "2 in" }, { ALLOW_WATER_AUGUST, "2 in" },
	{ ALLOW_WATER_SEPTEMBER, "2 in" }, { ALLOW_WATER_OCTOBER, "2 in" },
	{ ALLOW_WATER_NOVEMBER, "2 in" }, { ALLOW_WATER_DECEMBER, "2 in" },
	{ ALLOW_GATE_CLEAR, "4 ft" }, { ALLOW_FENCE_HIGH, "30 in" },
	{ ALLOW_HOUSE_CLEAR, "13 in" },
	{ ALLOW_FENCE_GAP, "1 in" },
	{ FIXTURE_HEIGHT, "10 ft" },
	{ ALLOW_PATH_CLEAR, "10 ft" }, { ALLOW_LAWN_CLEAR, "12 ft" },
	{ ALLOW_PLANT_TALL, "30" }, { ALLOW_SLENDER_LONG, "1.5" }, { ALLOW_FIXTURE_SLENDER, "2" },
};

static struct garden garden;

/* What is said of a takeoff. */
struct said {
	struct text figures; /* all parts but what is assumed */
	struct text json;
	struct text assumed; /* that part alone, in full; a paragraph on one line */
};
static struct said base;

/* Paragraphs go on with four blanks. */
static void join_paragraphs(char *text)
{
	char *to = text;

	for (const char *c = text; *c; c++) {
		bool goes_on = *c == '\n' && strncmp(c + 1, "    ", 4) == 0;

		if (goes_on)
			c += 4;
		*to++ = goes_on ? ' ' : *c;
	}
	*to = '\0';
}

static void said_fini(struct said *said)
{
	text_fini(&said->figures);
	text_fini(&said->json);
	text_fini(&said->assumed);
}

static void count(struct said *said)
{
	struct text_sink to_json = text_sink(&said->json);
	const unsigned part = 1u << PART_ASSUMED;

	garden_count(&garden);
	garden_print(&garden, &said->figures, "all.plot", PARTS_ALL & ~part);
	report_json(&to_json.sink, &garden.plot, &garden.takeoff);
	garden_print(&garden, &said->assumed, "all.plot", part);
	join_paragraphs(said->assumed.bytes);
}

static void setup(void)
{
	struct diag d;

	garden = (struct garden){ .arena = ARENA_EMPTY };
	plot_init(&garden.plot);
	ck_assert_msg(format_read(plot_words, strlen(plot_words), &garden.plot, &d), "%d:%d %s, %s",
		d.line, d.column, d.found, d.expected);
	for (size_t i = 0; i < sizeof settings / sizeof *settings; i++)
		plot_set(&garden.plot, settings[i].letter, settings[i].attribute,
			settings[i].value);
	book_of(&garden.book, book_words);
	garden.has_book = true;
	base = (struct said){ 0 };
	count(&base);
}

static void teardown(void)
{
	said_fini(&base);
	garden_fini(&garden);
}

/* The block of the plot that an attribute is tried in: of the legend the first entry to which it
 * matters. */
static struct block *block_of(enum attribute a)
{
	static const char letters[BLOCK_KINDS] = {
		[BLOCK_BED] = 'b', [BLOCK_PATH] = 'p', [BLOCK_LAWN] = 'l', [BLOCK_FIXTURE] = 'S',
	};
	struct details *details = &garden.plot.details;
	enum subject subject = attribute_row(a)->subject;
	char letter = letters[attribute_block(a)];

	if (attribute_block(a) == BLOCK_ALLOW)
		return &details->allow;
	if (attribute_block(a) == BLOCK_FENCE)
		return &details->fences[0].block;
	if (attribute_block(a) == BLOCK_PLANT)
		return &details->plants.items[0].block;
	letter = a == BED_PREPARE ? 'e' : a == BED_CAP ? 'c' :
		subject == SUBJECT_LEVEL || a == BED_DRIP_ROW || a == BED_DRIP_EMITTER ? 'd' :
		letter;
	for (size_t i = 0; i < details->legend_count; i++)
		if (details->legend[i].letter == letter)
			return &details->legend[i].block;
	ck_abort_msg("no entry %c", letter);
	return NULL;
}

/* Another number than the default, within the range. */
static int64_t other_number(const struct value_rule *rule, int64_t number, int64_t step)
{
	return number + step <= rule->most ? number + step : number - step;
}

static struct value other_value(enum attribute a)
{
	const struct attribute_row *row = attribute_row(a);
	struct value value = row->preset;

	value.set = true;
	switch (row->rule.kind) {
	case VALUE_LENGTH:
		value.as.length = other_number(&row->rule, value.as.length, NM_PER_INCH);
		break;
	case VALUE_COUNT:
		value.as.number = other_number(&row->rule, value.as.number, 1);
		break;
	case VALUE_DECIMAL:
		value.as.number = other_number(&row->rule, value.as.number, MILLION / 4);
		break;
	case VALUE_PERCENT:
		value.as.number = other_number(&row->rule, value.as.number, 10 * MILLION);
		break;
	case VALUE_CHOICE:
		value.as.number = row->rule.words[value.as.number + 1] ? value.as.number + 1 : 0;
		break;
	case VALUE_AMOUNT:
		value.as.amount.millionths = value.as.amount.millionths * 3 / 2;
		break;
	case VALUE_SIZE:
		value.as.size.along -= 4 * NM_PER_INCH;
		break;
	default:
		ck_abort_msg("%s: its value must be listed", row->keyword);
	}
	return value;
}

static struct value read_value(enum attribute a, const char *words)
{
	struct scan s = scan_start(words, strlen(words), 1);
	struct value value;
	struct diag d;

	ck_assert_msg(value_scan(&s, &attribute_row(a)->rule, UNITS_IMPERIAL, &value, &d) &&
		scan_is_done(&s), "%s: %s", attribute_row(a)->keyword, words);
	return value;
}

static struct value value_to_try(enum attribute a)
{
	for (size_t i = 0; i < sizeof usual / sizeof *usual; i++)
		if (usual[i].attribute == a)
			return read_value(a, usual[i].value);
	return other_value(a);
}

static bool moves_a_figure(const struct said *said)
{
	return strcmp(said->json.bytes, base.json.bytes) != 0 ||
		strcmp(said->figures.bytes, base.figures.bytes) != 0;
}

/* A value stands at the start of a paragraph, after a heading or after another value. */
static bool is_start(const char *at)
{
	return strncmp(at - 2, "  ", 2) == 0 || strncmp(at - 2, ": ", 2) == 0 ||
		strncmp(at - 2, "; ", 2) == 0;
}

/* What it rests on may come behind it, and why it matters. */
static bool is_end(const char *at)
{
	return *at == ';' || *at == '.' || *at == ':' || strncmp(at, " (", 2) == 0;
}

/* Whether the list has the label with the whole value. */
static bool is_assumed(const struct said *said, const char *label, const char *value)
{
	size_t length = strlen(label), shown = strlen(value);

	for (const char *at = said->assumed.bytes; (at = strstr(at, label)); at += length)
		if (is_start(at) && at[length] == ' ' &&
			strncmp(at + length + 1, value, shown) == 0 &&
			is_end(at + length + 1 + shown))
			return true;
	return false;
}

/* The subsoil to which an attribute matters. */
static void lay_subsoil(enum subject subject)
{
	if (subject != SUBJECT_CLAY && subject != SUBJECT_SAND)
		return;
	plot_set(&garden.plot, 0, ALLOW_SUBSOIL, subject == SUBJECT_CLAY ? "clay" : "sand");
	said_fini(&base);
	base = (struct said){ 0 };
	count(&base);
}

START_TEST(an_attribute_that_moves_a_figure_is_assumed)
{
	enum attribute a = (enum attribute)_i;
	const struct attribute_row *row = attribute_row(a);
	struct said said = { 0 };
	struct text words = TEXT_EMPTY;
	struct value value = value_to_try(a);
	bool moves;

	lay_subsoil(row->subject);
	value_write(&words, &row->rule, &value, UNITS_IMPERIAL);
	block_set(block_of(a), a, value);
	count(&said);
	moves = moves_a_figure(&said);
	ck_assert_msg(!moves || is_assumed(&said, row->label, words.bytes),
		"%s %s moves a figure and is not said", row->keyword, words.bytes);
	ck_assert_msg(moves == (row->subject != SUBJECT_NONE), "%s %s moves %s figure",
		row->keyword, words.bytes, moves ? "a" : "no");
	said_fini(&said);
	text_fini(&words);
}
END_TEST

/* Of what is bought here sand alone weighs as stone, and nothing as soil. */
START_TEST(what_a_part_of_a_mix_weighs_by_is_assumed)
{
	struct said said = { 0 };

	garden_fini(&garden);
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_BUILD, "level");
	plot_set(&garden.plot, 'b', BED_REPLACE, "yes");
	plot_set(&garden.plot, 'b', BED_MIX, "compost 1, sharp-sand 1");
	count(&said);
	ck_assert(is_assumed(&said, "Density of stone", "2700 lb/cu yd"));
	ck_assert(!is_assumed(&said, "Density of soil", "2000 lb/cu yd"));
	said_fini(&said);
}
END_TEST

START_TEST(what_a_plant_does_not_tell_is_said_so_and_what_its_price_is_for)
{
	struct said said = { 0 };

	garden_fini(&garden);
	garden_rectangle(&garden, 'b', 8, 4);
	plot_add_lines(&garden.plot, "plant v \"Lavender\"\n  spacing 1 ft\n  price 3\n  at 2,2\n");
	count(&said);
	ck_assert(strstr(said.assumed.bytes, "; Height, grown not told; Pattern triangular; Sun it "
		"needs not told;"));
	ck_assert(strstr(said.assumed.bytes, "Spacing 1 ft; Price of one 3 (in no sum without "
		"a price book)"));
	said_fini(&said);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("assumed");
	TCase *figures = suite_case(suite, "figures");

	tcase_add_checked_fixture(figures, setup, teardown);
	/* All but the head, which comes first, and the rates, which stand with the hours. */
	tcase_add_loop_test(figures, an_attribute_that_moves_a_figure_is_assumed, ALLOW_KERF,
		RATE_STRIP);
	tcase_add_loop_test(figures, an_attribute_that_moves_a_figure_is_assumed, PLANT_SPACING,
		PLANT_PRICE + 1);
	tcase_add_test(figures, what_a_plant_does_not_tell_is_said_so_and_what_its_price_is_for);
	tcase_add_test(figures, what_a_part_of_a_mix_weighs_by_is_assumed);
	return suite;
}
