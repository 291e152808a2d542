/* Reading and writing plots: what is written is read as it was, what is wrong is refused with
 * its place and a reason. */
#include "plot/format/format.h"
#include "support/details.h"
#include "support/golden.h"
#include "support/plot_check.h"
#include "support/plots.h"
#include "support/runner.h"

#include <glob.h>
#include <stdio.h>
#include <stdlib.h>
#include <string.h>

#define COUNT(table) ((int)(sizeof(table) / sizeof *(table)))

/* Beginnings for the tables below: what follows stands on line 4, or 5. */
#define HEAD "parterre-plot 1\nunits imperial\ncell 1 ft\n"
#define LEGEND HEAD "bed b \"Bed\"\n"
#define LEGEND_APART HEAD "\nbed b \"Bed\"\n" /* as it is written */
#define LATER_EXPECTED "fence, service, plant, levels, finish, fall, house, shade, name, tie, " \
	"keep, drop, tap, rate, extra or the end of the file"
#define GROUND "ground 2 x 1\n  ..\n"

#define EIGHT_DROPS "1 in, 1 in, 1 in, 1 in, 1 in, 1 in, 1 in, 1 in, "
#define DROPS_ROW "  " EIGHT_DROPS EIGHT_DROPS EIGHT_DROPS "3 ft\n"
#define FOUR_ROWS DROPS_ROW DROPS_ROW DROPS_ROW DROPS_ROW
#define TWELVE_ROWS FOUR_ROWS FOUR_ROWS FOUR_ROWS

/* In memory of exactly its size: a sanitizer sees a byte read beyond it. */
static bool read_bytes(const char *bytes, size_t length, struct plot *plot, struct diag *d)
{
	char *exact = malloc(length ? length : 1);
	bool done;

	if (length)
		memcpy(exact, bytes, length);
	plot_init(plot);
	done = format_read(exact, length, plot, d);
	free(exact);
	return done;
}

static void check_is_empty(const struct plot *plot)
{
	struct plot none;

	plot_init(&none);
	ck_assert(plot_equal(plot, &none));
	ck_assert_ptr_null(plot->ground.cells);
}

/* Reads the text and compares what is written of it. */
static void check_writes(const char *text, size_t length, const char *expected)
{
	struct text written = TEXT_EMPTY;
	struct plot plot;
	struct diag d = { 0 };

	ck_assert_msg(read_bytes(text, length, &plot, &d), "%d:%d: found %s, expected %s", d.line,
		d.column, d.found, d.expected);
	plot_check(&plot);
	format_write(&plot, &written);
	ck_assert_str_eq(written.bytes, expected);
	text_fini(&written);
	plot_fini(&plot);
}

/* ---- What is read ---------------------------------------------------------------------------- */

static const char *const canonical[] = {
	HEAD "\nground 1 x 1\n  .\n",
	LEGEND_APART "\nground 1 x 1\n  b\n",
	/* one of everything, in order */
	"parterre-plot 1\ntitle \"\"\nnote \"One\"\nnote \"Two\"\nunits metric\ncell 300 mm\nnorth "
	"12.5\nsite -33.9\nmirror four-way\naxis 2,1\n"
	"notice \"2231-0417\"\nnotice-end \"14 May, noon\"\nallow\n  note \"Ours\"\n  kerf 3 mm\n"
	"  fit 0 mm\n  shortest 75 mm\n  inside 200 mm\n  breakage 5 %\n"
	"  settlement 12.5 %\n  beads 1\n  cartridge 9 m\n"
	"  sleeve-past 200 mm\n  service-near 450 mm\n"
	"\nbed b \"Bed\"\n  note \"First\"\n  note \"Second\"\n  build level\n"
	"  block 400 mm x 200 mm x 150 mm\n  density 2150 kg/m3\n  courses 2\n  cap none\n  embed "
	"0 mm\n  inside base\n  base 100 mm\n  freeboard 40 mm\n  mulch 50 mm\n  mix topsoil 5, "
	"sharp-sand 0.5\n  prepare 200 mm\n  amend 50 mm\n  replace yes\n"
	"path p \"Path\"\n  base 2 m\n  surface 40 mm\n"
	"lawn l \"Lawn\"\n  cover none\n  topsoil 0 mm\n"
	"fixture S \"Sundial\"\n  height 30 m\n  base 100 mm\n"
	"bed a \"Again\"\n  cap 400 mm x 200 mm x 50 mm\n"
	"\nground 3 x 2\n  bpl\n  aS.\n",
	/* imperial lengths, and a text with all that needs an escape */
	"parterre-plot 1\nunits imperial\ncell 6 1/2 in\n\nbed z \"\xC3\x9C \\\"q\\\" \\\\\"\n"
	"  block 1 ft x 4 in x 3 63/64 in\n  embed 0 in\n  base 100 mm\n  mulch 1 ft\n"
	"\nground 2 x 1\n  z.\n",
	/* fences: crossing and touching itself, gates side by side, the same line in another
	 * fence */
	HEAD "\nground 4 x 3\n  ....\n  ....\n  ....\n\nfence \"Pickets \\\"white\\\"\"\n"
	"  note \"Ours\"\n  height 42 in\n  section 6 ft\n  post 4 in\n  gap 0 in\n  rails 3\n"
	"  depth 30 in\n  hole 1 ft\n  gravel 6 in\n  inset 0 in\n  clearance 1 in\n  leaf 40 in\n"
	"  run 0,0 4,0 4,3 0,3 0,0\n  run 2,3 2,0\n  run 4,2 0,2\n  gate 1,0 2,0\n  gate 3,0 2,0\n"
	"fence \"Empty\"\nfence \"Back\"\n  run 0,0 2,0 4,0\n  gate 0,0 2,0\n",
	/* names, two in one place, one on open ground */
	LEGEND_APART "\nground 2 x 2\n  b.\n  .b\n\nfence \"A\"\nname 1,1 \"Thyme \\\"grey\\\"\"\n"
	"name 0,0 \"Sage\"\nname 0,0 \"Mint\"\nname 1,0 \"Lost\"\nrate seed 0.01 h per m2\n",
	/* services, crossing and lying over themselves, one of them nowhere yet */
	HEAD "\nground 4 x 3\n  ....\n  ....\n  ....\n\nfence \"A\"\n"
	"service water \"Supply to the \\\"basin\\\"\" existing\n  note \"Marked\"\n"
	"  depth 30 in\n  owner public\n  line 0,3 4,3 4,0\n  line 2,0 2,3 2,1\n"
	"service gas \"Gas\" existing\n  depth 10000 mm\nservice power \"Lamp\" to-lay\n"
	"  owner private\n  trench 5 in\n  below 0 in\n"
	"  line 0,0 0,3\nservice telecom \"T\" existing\n"
	"service drain \"Gully\" to-lay\nservice other \"O\" existing\n  depth 0 in\n"
	"name 0,0 \"A\"\n",
	/* plants, two in one cell, a drift of a cell that is no bed, one with nothing but a name */
	LEGEND_APART "bed t \"Tub\"\npath p \"Path\"\n\nground 3 x 2\n  bb.\n  tp.\n\n"
	"service gas \"Gas\" existing\n"
	"plant r \"Shrub \\\"rose\\\"\"\n  note \"Ours\"\n  spacing 3 ft\n  spread 4 ft\n"
	"  height 5 ft\n  pattern square\n  sun part-shade\n  soil 16 in\n  pot 8 in\n"
	"  plant-from october\n  plant-until march\n  price 12.5\n  at 2,1\n  at 0,0\n"
	"  drift b front\n  drift t whole\n  drift 2,0 back\n  drift 0,0 middle\n"
	"plant a \"Thyme\"\n  at 0,0\n  at 1,0\nplant z \"Sedge\"\n"
	"name 0,0 \"A\"\n",
	/* levels of a step that does not divide the plan, and all that is around */
	"parterre-plot 1\nunits metric\ncell 500 mm\n\nground 5 x 2\n  .....\n  .....\n\n"
	"levels 2 m\n  0 mm, 25 mm, 10 m\n  1 m, 12.5 mm, 0.000001 mm\nfinish 5,2 40 mm\n"
	"fall 1.5 % towards 359.999999\nhouse \"Number 4\"\n  note \"Brick\"\n"
	"  from -2,-12 to 14,-2\nhouse \"Shed\" 100 m\n  from -4096,-4096 to 4096,4096\n"
	"shade \"Limes\" 12500 mm\n  note \"In leaf\"\n  from 6,-3 to 9,2\n"
	"name 4,1 \"A\"\ntie 0,0 \"House, \\\"north\\\"\" 3760 mm\ntie 5,2 \"Oak\" 1000 m\n"
	"keep \"Old pear\" 2 m\n  note \"Do not dig\"\n  note \"Nor drive\"\n  at 5,0\n"
	"keep \"Wall\"\n  from 0,0 to 1,2\ndrop 0,2\nrate seed 0.01 h per m2\n",
	HEAD "\n" GROUND "\nlevels 1 in\n"
	"  " EIGHT_DROPS EIGHT_DROPS EIGHT_DROPS "2 1/2 in\n" TWELVE_ROWS
	"fall 0 % away\n",
	HEAD "\n" GROUND "\nlevels 8 ft\n  0 in, 1 in\n  6 1/64 in, 32 ft\nfinish 0,0 0 in\n",
	HEAD "\n" GROUND "\ndrop 2,1\n",
	/* all rates, in all units, and extra goods, two of one name */
	HEAD "\n" GROUND "\nrate strip 0.01 h per sq-ft\nrate dig 0.06 h per cu-ft\n"
	"rate post 1.5 h per each\nrate load 1.3 h per m3\nrate tamp 0.1 h per m2\n"
	"rate fabric 0.005 h per sq-ft\nrate base 1 h per m3\nrate fixture 2 h per each\n"
	"rate block 0.05 h per each\nrate cap 0.04 h per each\nrate cut 0.1 h per each\n"
	"rate backfill 0.03 h per cu-ft\nrate loosen 0.02 h per sq-ft\n"
	"rate prepare 0.03 h per sq-ft\nrate liner 0.05 h per ft\nrate fill 1.25 h per m3\n"
	"rate edging 0.1 h per m\nrate surface 0.02 h per sq-ft\nrate panel 1000 h per each\n"
	"rate gate 0.000001 h per each\nrate mulch 0.04 h per cu-ft\nrate topsoil 1 h per m3\n"
	"rate turf 0.01 h per sq-ft\nrate seed 0.01 h per m2\n"
	"extra \"Paint \\\"white\\\"\" 2 each\nextra \"Paint \\\"white\\\"\" 3 each\n"
	"extra \"Boards\" 48 ft\nextra \"Tape\" 30 m\nextra \"Sheet\" 100 sq-ft\n"
	"extra \"Net\" 4.5 m2\nextra \"Lime\" 1 cu-ft\nextra \"Grit\" 0.001 m3\n"
	"extra \"Nails\" 5 lb\nextra \"Screws\" 100000 kg\n",
};

START_TEST(a_canonical_plot_is_written_as_it_was_read)
{
	check_writes(canonical[_i], strlen(canonical[_i]), canonical[_i]);
}
END_TEST

START_TEST(the_sample_plots_are_written_as_they_were_read)
{
	glob_t found;

	ck_assert_int_eq(glob("plots/*.plot", 0, NULL, &found), 0);
	ck_assert_uint_ge(found.gl_pathc, 6);
	for (size_t i = 0; i < found.gl_pathc; i++) {
		FILE *file = fopen(found.gl_pathv[i], "r");
		struct text text = TEXT_EMPTY;

		for (int c; (c = getc(file)) != EOF;)
			text_add_repeat(&text, (char)c, 1);
		fclose(file);
		check_writes(text.bytes, text.length, text.bytes);
		text_fini(&text);
	}
	globfree(&found);
}
END_TEST

static const struct {
	const char *text, *written;
} spellings[] = {
	/* order within the head and its blocks, notes gathered */
	{ "parterre-plot 1\nmirror off\ncell 1 ft\nallow\n\tfit 1/8 in\n  note \"A\"\n  kerf 1/8 "
	"in\nnote \"1\"\nunits imperial\nnote \"2\"\ntitle \"T\"\nground 1 x 1\n .\n",
	  "parterre-plot 1\ntitle \"T\"\nnote \"1\"\nnote \"2\"\nunits imperial\ncell 1 ft\nmirror "
	"off\nallow\n  note \"A\"\n  kerf 1/8 in\n  fit 1/8 in\n\nground 1 x 1\n  .\n" },
	/* blank lines, blanks at the end, tabs, CRLF */
	{ "parterre-plot\t1  \r\n\r\n \t\r\nunits\timperial \r\ncell  1 ft\t\r\n\r\nbed\tb   "
		"\"Bed\" \r\n"
	  "\r\n\tcourses\t4 \r\n\r\n  embed 1 in\r\nground 2 x 1 \r\n\tb. \t\r\n\r\n  \r\n",
	  LEGEND_APART "  courses 4\n  embed 1 in\n\nground 2 x 1\n  b.\n" },
	/* no last newline; blanks left out, or more of them */
	{ HEAD "ground 2x1\n ..", HEAD "\n" GROUND },
	{ HEAD "ground 002   x   01\n \t  ..\n\n\n", HEAD "\n" GROUND },
	{ LEGEND "  courses  4" "\nground 1 x 1\n b",
		LEGEND_APART "  courses 4\n\nground 1 x 1\n  b\n" },
	/* units are what is shown, not what may be used */
	{ "parterre-plot 1\ncell 25.4 mm\nunits imperial\n" GROUND,
	  "parterre-plot 1\nunits imperial\ncell 1 in\n\n" GROUND },
	/* an empty block says nothing */
	{ HEAD "allow\n" GROUND, HEAD "\n" GROUND },
	/* a block's notes come first; what its kind does not use is kept */
	{ LEGEND "  courses 4\n  note \"N\"\n  build level\n" GROUND,
	  LEGEND_APART "  note \"N\"\n  build level\n  courses 4\n\n" GROUND },
	/* a fence's lines in any order, blanks between */
	{ HEAD "ground 2 x 1\n  ..\nfence \"A\"\n  gate   1,0\t0,0 \n  run 00,0  2,0 2,1\n\n"
	  "  rails 3\n  note \"N\"\n  run 0,1\t1,1\n  height 4 ft\n  gate 1,0 2,0\n\nfence \"B\"",
	  HEAD "\nground 2 x 1\n  ..\n\nfence \"A\"\n  note \"N\"\n  height 4 ft\n  rails 3\n"
	  "  run 0,0 2,0 2,1\n  run 0,1 1,1\n  gate 1,0 0,0\n  gate 1,0 2,0\nfence \"B\"\n" },
	/* fences, rates and extra goods in any order */
	{ HEAD GROUND "rate seed 0.01 h per m2\nname  00,0\t\"Sage\" \n\nfence \"A\"\n",
	  HEAD "\n" GROUND "\nfence \"A\"\nname 0,0 \"Sage\"\nrate seed 0.01 h per m2\n" },
	{ HEAD GROUND "extra \"Paint\"  2.50 each\nrate seed\t0.01 h  per m2\nfence \"A\"\n  run "
	  "0,0 1,0\n\nrate block 0.050 h per each\nextra \"Boards\" 48 ft \nfence \"B\"\n",
	  HEAD "\n" GROUND "\nfence \"A\"\n  run 0,0 1,0\nfence \"B\"\nrate block 0.05 h per each\n"
	  "rate seed 0.01 h per m2\nextra \"Paint\" 2.5 each\nextra \"Boards\" 48 ft\n" },
	/* a block may be interrupted by blank lines */
	{ HEAD "allow\n\n  beads 1\n \n  kerf 0 in\n" GROUND,
	  HEAD "allow\n  kerf 0 in\n  beads 1\n\n" GROUND },
};

START_TEST(every_valid_spelling_gives_the_canonical_plot)
{
	check_writes(spellings[_i].text, strlen(spellings[_i].text), spellings[_i].written);
}
END_TEST

START_TEST(what_is_read_stands_in_the_model)
{
	struct plot plot;
	struct diag d = { 0 };
	const char *text = canonical[2];

	ck_assert(read_bytes(text, strlen(text), &plot, &d));
	ck_assert_int_eq(plot_units(&plot), UNITS_METRIC);
	ck_assert_int_eq(plot_cell(&plot), 300 * NM_PER_MM);
	ck_assert_int_eq(plot.ground.columns, 3);
	ck_assert_int_eq(plot.ground.rows, 2);
	ck_assert_int_eq(ground_cell(&plot.ground, 0, 1), 'a');
	ck_assert_int_eq(ground_cell(&plot.ground, 2, 1), '.');
	ck_assert_uint_eq(plot.details.legend_count, 5);
	ck_assert_int_eq(plot_class_of(&plot, 'S'), CLASS_FIXTURE);
	ck_assert_str_eq(plot_entry(&plot, 'S')->name, "Sundial");
	ck_assert_int_eq(block_length(&plot_entry(&plot, 'p')->block, PATH_BASE), 2 * NM_PER_M);
	ck_assert_str_eq(plot_entry(&plot, 'b')->block.notes.texts[1], "Second");
	ck_assert_str_eq(plot.details.head.notes.texts[0], "One");
	ck_assert_str_eq(plot.details.allow.notes.texts[0], "Ours");
	ck_assert(!block_value(&plot_entry(&plot, 'a')->block, BED_COURSES)->set);
	plot_fini(&plot);
}
END_TEST

/* ---- What is refused ------------------------------------------------------------------------- */

/* Bytes that may hold a NUL, with their length. */
#define BYTES(text) text, sizeof(text) - 1

struct bad {
	const char *bytes;
	size_t length;
	int line, column;
	const char *found, *expected; /* expected: its beginning */
};

static void check_refused(const struct bad *bad)
{
	struct plot plot;
	struct diag d = { .line = -1 };

	ck_assert_msg(!read_bytes(bad->bytes, bad->length, &plot, &d), "%s was read", bad->bytes);
	ck_assert_msg(d.line == bad->line && d.column == bad->column &&
		strcmp(d.found, bad->found) == 0 &&
		strncmp(d.expected, bad->expected, strlen(bad->expected)) == 0,
		"%s\nat %d:%d: found %s, expected %s", bad->bytes, d.line, d.column, d.found,
		d.expected);
	check_is_empty(&plot);
}

static const struct bad first_lines[] = {
	{ BYTES(""), 1, 1, "an empty file", "parterre-plot 1" },
	{ BYTES("\n"), 1, 1, "the end of the line", "parterre-plot 1, the first line of a plot" },
	{ BYTES("\n" HEAD GROUND), 1, 1, "the end of the line", "parterre-plot 1" },
	{ BYTES("units metric\n"), 1, 1, "units", "parterre-plot 1" },
	{ BYTES(" parterre-plot 1\n"), 1, 2, "parterre-plot", "parterre-plot 1" },
	{ BYTES("Parterre-plot 1\n"), 1, 1, "Parterre-plot", "parterre-plot 1" },
	{ BYTES("parterre-plots 1\n"), 1, 1, "parterre-plots", "parterre-plot 1" },
	{ BYTES("parterre-plot\n"), 1, 14, "nothing", "version 1" },
	{ BYTES("parterre-plot 2\n"), 1, 15, "2", "version 1, the only version" },
	{ BYTES("parterre-plot 1.1\n"), 1, 15, "1.1", "version 1" },
	{ BYTES("parterre-plot 01\n"), 1, 15, "01", "version 1" },
	{ BYTES("parterre-plot 1 draft\n"), 1, 17, "draft", "the end of the line" },
	{ BYTES("\x7F" "ELF\x02\x01\x01\0\0\0\0\0"), 1, 8, "<00>", "text" },
	{ BYTES("\x89PNG\r\n\x1A\n"), 1, 1, "<89>", "UTF-8 text" },
	{ BYTES("{\"format\": \"parterre-takeoff\"}\n"), 1, 1, "{\"format\":", "parterre-plot 1" },
};

static const struct bad bytes[] = {
	{ BYTES("\xEF\xBB\xBFparterre-plot 1\n"), 1, 1, "a byte order mark", "a file without one" },
	{ BYTES(HEAD "\xEF\xBB\xBF" GROUND), 4, 1, "<EF><BB><BF>ground", "title, units" },
	{ BYTES(HEAD "title \"a\0b\"\n"), 4, 9, "<00>", "text, each line ended by LF or CR LF" },
	{ BYTES(HEAD "\0"), 4, 1, "<00>", "text" },
	{ BYTES(HEAD "title \"a\"\rnote \"b\"\n"), 4, 10, "<0D>",
		"text, each line ended by LF or CR LF" },
	{ BYTES(HEAD "title \"a\"\r\r\n"), 4, 10, "<0D>", "text" },
	{ BYTES(HEAD "ground 1 x 1\n  .\r"), 5, 4, "<0D>", "text" },
	{ BYTES("parterre-plot 1\r" "units metric\r"), 1, 16, "<0D>", "text" },
	{ BYTES(HEAD "title \"\xFF\"\n"), 4, 8, "<FF>", "UTF-8 text" },
	{ BYTES(HEAD "title \"ab\xC3\"\n"), 4, 10, "<C3>", "UTF-8 text" },
	{ BYTES(HEAD "title \"\xC0\xAF\"\n"), 4, 8, "<C0>", "UTF-8 text" },
	{ BYTES(HEAD "title \"\xED\xA0\x80\"\n"), 4, 8, "<ED>", "UTF-8 text" },
	{ BYTES(HEAD "title \"\xE2\x82\n"), 4, 8, "<E2>", "UTF-8 text" },
	{ BYTES(HEAD "title \"a\tb\"\n"), 4, 9, "<09>", "a printable character" },
	{ BYTES(HEAD "title \"a\x1B[31m\"\n"), 4, 9, "<1B>", "a printable character" },
	{ BYTES(HEAD "title \"a\xC2\x9B" "b\"\n"), 4, 9, "<C2><9B>", "a printable character" },
	{ BYTES(HEAD "title \"a\xE2\x80\xAE" "b\"\n"), 4, 9, "<E2><80><AE>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\xE2\x81\xA6" "b\"\n"), 4, 9, "<E2><81><A6>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\xE2\x80\x8B" "b\"\n"), 4, 9, "<E2><80><8B>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\xEF\xBB\xBF" "b\"\n"), 4, 9, "<EF><BB><BF>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\xE2\x80\xA8" "b\"\n"), 4, 9, "<E2><80><A8>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\xEE\x80\x80" "b\"\n"), 4, 9, "<EE><80><80>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\xEF\xBF\xBF" "b\"\n"), 4, 9, "<EF><BF><BF>",
		"a printable character" },
	{ BYTES(HEAD "title \"a\\nb\"\n"), 4, 9, "\\", "a printable character" },
	{ BYTES(HEAD "\x0C" "\n"), 4, 1, "<0C>", "title, units" },
};

static const struct bad heads[] = {
	{ BYTES(HEAD "color red\n"), 4, 1, "color",
	  "title, units, cell, north, site, mirror, axis, prices, notice, notice-end, allow, "
	  "bed, path, lawn, fixture, ground or note" },
	{ BYTES(HEAD "Title \"a\"\n"), 4, 1, "Title", "title, units" },
	{ BYTES(HEAD "# a comment\n"), 4, 1, "#", "title, units" },
	{ BYTES(HEAD "fence \"Pickets\"\n"), 4, 1, "fence", "title, units" },
	{ BYTES(HEAD "kerf 1/8 in\n"), 4, 1, "kerf", "title, units" },
	{ BYTES(HEAD "units metric\n"), 4, 1, "units", "each keyword once" },
	{ BYTES(HEAD "title \"a\"\ntitle \"a\"\n"), 5, 1, "title", "each keyword once" },
	{ BYTES(HEAD "allow\nallow\n"), 5, 1, "allow", "each keyword once" },
	{ BYTES("parterre-plot 1\nparterre-plot 1\n"), 2, 1, "parterre-plot", "title, units" },
	{ BYTES(HEAD "north 360\n"), 4, 7, "360", "0 to 359.999999" },
	{ BYTES(HEAD "site 67\n"), 4, 6, "67", "-66 to 66" },
	{ BYTES("parterre-plot 1\nunits imperial\ncell 12\n"), 3, 6, "12",
	  "a length with its unit, such as 12 in" },
	{ BYTES("parterre-plot 1\nunits metric\ncell 300\n"), 3, 6, "300",
	  "a length with its unit, such as 300 mm" },
	{ BYTES("parterre-plot 1\nunits imperial\ncell 11 ft\n"), 3, 6, "11", "1 in to 10 ft" },
	{ BYTES("parterre-plot 1\nunits feet\n"), 2, 7, "feet", "imperial or metric" },
	{ BYTES("parterre-plot 1\nunits imperial metric\n"), 2, 16, "metric",
		"the end of the line" },
	{ BYTES(HEAD "mirror left right\n"), 4, 8, "left", "off, left-right" },
	{ BYTES(HEAD "title \"a\" \"b\"\n"), 4, 11, "\"b\"", "the end of the line" },
	{ BYTES(HEAD "title\n"), 4, 6, "the end of the line", "text in double quotes" },
	{ BYTES(HEAD "note \"\"\n"), 4, 6, "\"\"", "1 to 500 characters" },
	{ BYTES(HEAD "note \"a\n"), 4, 8, "the end of the line", "a closing double quote" },
	{ BYTES(HEAD "allow 5 %\n"), 4, 7, "5", "the end of the line" },
	{ BYTES(HEAD "allow\n  breakage 5\n"), 5, 12, "5", "a percentage such as 5 %" },
	{ BYTES(HEAD "allow\n  courses 4\n"), 5, 3, "courses",
	  "allow: kerf, fit, shortest, inside, breakage, settlement, beads, cartridge, "
	  "adhesive-spare, topsoil, others in parterre-plot(5) or note" },
	{ BYTES(HEAD "allow\n  kerf 0 in\n  kerf 0 in\n"), 6, 3, "kerf", "each keyword once" },
	/* an indented line with no block */
	{ BYTES("parterre-plot 1\n  units imperial\n"), 2, 3, "units",
		"an indented line only inside a block" },
	{ BYTES(HEAD "\tcourses 4\n"), 4, 2, "courses", "an indented line only inside a block" },
	{ BYTES(HEAD "allow\nnote \"a\"\n  kerf 0 in\n"), 6, 3, "kerf", "an indented line only" },
	{ BYTES(HEAD "allow\ntitle \"a\"\n  kerf 0 in\n"), 6, 3, "kerf", "an indented line only" },
	{ BYTES(HEAD "axis 5,5\n" GROUND), 4, 6, "5,5", "half cells from 1,1 to 3,1" },
	{ BYTES(HEAD "axis 0,1\n" GROUND), 4, 6, "0,1", "half cells from 1,1 to 3,1" },
	{ BYTES(HEAD "axis 4,1\n" GROUND), 4, 6, "4,1", "half cells from 1,1 to 3,1" },
	{ BYTES(HEAD "axis   3,2\n" GROUND), 4, 8, "3,2", "half cells from 1,1 to 3,1" },
	{ BYTES(HEAD "axis 3,0\n" GROUND), 4, 6, "3,0", "half cells from 1,1 to 3,1" },
};

static const struct bad legends[] = {
	{ BYTES(HEAD "bed\n"), 4, 4, "the end of the line", "a lower-case letter" },
	{ BYTES(HEAD "bed B \"Bed\"\n"), 4, 5, "B", "a lower-case letter" },
	{ BYTES(HEAD "bed bb \"Bed\"\n"), 4, 5, "bb", "a lower-case letter" },
	{ BYTES(HEAD "bed . \"Bed\"\n"), 4, 5, ".", "a lower-case letter" },
	{ BYTES(HEAD "bed \xC3\xA4 \"Bed\"\n"), 4, 5, "\xC3\xA4", "a lower-case letter" },
	{ BYTES(HEAD "bed 1 \"Bed\"\n"), 4, 5, "1", "a lower-case letter" },
	{ BYTES(HEAD "bed \"Bed\"\n"), 4, 5, "\"Bed\"", "a lower-case letter" },
	{ BYTES(HEAD "path P \"Path\"\n"), 4, 6, "P", "a lower-case letter" },
	{ BYTES(HEAD "lawn L \"Lawn\"\n"), 4, 6, "L", "a lower-case letter" },
	{ BYTES(HEAD "fixture s \"Sundial\"\n"), 4, 9, "s", "a capital letter" },
	{ BYTES(HEAD "bed b\n"), 4, 6, "the end of the line", "text in double quotes" },
	{ BYTES(HEAD "bed b Bed\n"), 4, 7, "Bed", "text in double quotes" },
	{ BYTES(HEAD "bed b \"\"\n"), 4, 7, "\"\"", "1 to 60 characters" },
	{ BYTES(HEAD "bed b \"Bed\" x\n"), 4, 13, "x", "the end of the line" },
	{ BYTES(LEGEND "bed b \"Other\"\n"), 5, 5, "b",
		"another letter: b is in the legend already" },
	{ BYTES(LEGEND "path b \"Path\"\n"), 5, 6, "b", "another letter" },
	{ BYTES(LEGEND "  colour 4\n"), 5, 3, "colour", "bed: build, block, joint, density, "
	"courses, cap, embed, inside, base, reach, others in parterre-plot(5) or note" },
	{ BYTES(LEGEND "  surface 1 in\n"), 5, 3, "surface", "bed: build" },
	{ BYTES(LEGEND "  courses 4\n  courses 5\n"), 6, 3, "courses", "each keyword once" },
	{ BYTES(LEGEND "  courses 41\n"), 5, 11, "41", "1 to 40" },
	{ BYTES(LEGEND "  courses 4 5\n"), 5, 13, "5", "the end of the line" },
	{ BYTES(LEGEND "\t\tembed 3\n"), 5, 9, "3", "a length with its unit, such as 3 in" },
	{ BYTES(LEGEND "  block 1 ft x 4 in x 4\n"), 5, 23, "4", "a length with its unit" },
	{ BYTES(LEGEND "  block 4 in x 1 ft x 4 in\n"), 5, 16, "1", "a depth across the wall" },
	{ BYTES(HEAD "path p \"P\"\n  courses 4\n"), 5, 3, "courses",
		"path: base, surface, stone, fabric, edging or note" },
	{ BYTES(HEAD "lawn l \"L\"\n  base 4 in\n"), 5, 3, "base",
		"lawn: cover, topsoil, thickness or note" },
	{ BYTES(HEAD "fixture S \"S\"\n  cover turf\n"), 5, 3, "cover",
		"fixture: height, base, dial or note" },
	{ BYTES(HEAD "plant r \"Rose\"\n"), 4, 1, "plant", "title, units" },
	/* the head is over */
	{ BYTES(LEGEND "mirror off\n"), 5, 1, "mirror",
		"bed, path, lawn, fixture or ground; the head ends" },
	{ BYTES(LEGEND "allow\n"), 5, 1, "allow", "bed, path, lawn, fixture or ground" },
	{ BYTES(LEGEND "note \"late\"\n"), 5, 1, "note", "bed, path, lawn, fixture or ground" },
	{ BYTES(LEGEND "fence \"Pickets\"\n"), 5, 1, "fence",
		"bed, path, lawn, fixture or ground" },
};

static const struct bad missing[] = {
	/* on the first line of legend or ground */
	{ BYTES("parterre-plot 1\ncell 1 ft\nbed b \"Bed\"\n"), 3, 1, "bed", "units in the head" },
	{ BYTES("parterre-plot 1\nunits metric\nfixture S \"S\"\n"), 3, 1, "fixture",
		"cell in the head" },
	{ BYTES("parterre-plot 1\ncell 1 ft\n\nground 1 x 1\n  .\n"), 4, 1, "ground",
		"units in the head" },
	{ BYTES("parterre-plot 1\nunits metric\nground nonsense\n"), 3, 1, "ground",
		"cell in the head" },
	{ BYTES("parterre-plot 1\nbed nonsense\n"), 2, 1, "bed", "units in the head" },
	/* behind the last line */
	{ BYTES("parterre-plot 1"), 2, 1, "the end of the file", "units in the head" },
	{ BYTES("parterre-plot 1\n"), 2, 1, "the end of the file", "units in the head" },
	{ BYTES("parterre-plot 1\nunits metric\n"), 3, 1, "the end of the file",
		"cell in the head" },
	{ BYTES(HEAD), 4, 1, "the end of the file", "ground W x H and its rows" },
	{ BYTES(HEAD "\n\n"), 6, 1, "the end of the file", "ground W x H and its rows" },
	{ BYTES(LEGEND "  courses 4\n"), 6, 1, "the end of the file", "ground W x H and its rows" },
	{ BYTES(HEAD "ground 2 x 3\n"), 5, 1, "the end of the file", "row 1 of 3 of the ground" },
	{ BYTES(HEAD "ground 2 x 3\n  ..\n  ..\n"), 7, 1, "the end of the file",
		"row 3 of 3 of the ground" },
	{ BYTES(HEAD "ground 2 x 3\n  ..\n  .."), 7, 1, "the end of the file",
		"row 3 of 3 of the ground" },
};

static const struct bad grounds[] = {
	{ BYTES(HEAD "ground\n"), 4, 7, "the end of the line", "a number of cells from 1 to 2048" },
	{ BYTES(HEAD "ground 0 x 1\n"), 4, 8, "0", "a number of cells from 1 to 2048" },
	{ BYTES(HEAD "ground 2049 x 1\n"), 4, 8, "2049", "a number of cells from 1 to 2048" },
	{ BYTES(HEAD "ground 1 x 2049\n"), 4, 12, "2049", "a number of cells from 1 to 2048" },
	{ BYTES(HEAD "ground 1 x 0\n"), 4, 12, "0", "a number of cells from 1 to 2048" },
	{ BYTES(HEAD "ground -1 x 1\n"), 4, 8, "-1", "a number of cells" },
	{ BYTES(HEAD "ground 99999999999999999999 x 1\n"), 4, 8, "99999999999999999999",
		"a number of cells" },
	{ BYTES(HEAD "ground 2\n"), 4, 9, "the end of the line", "x, as in ground 14 x 8" },
	{ BYTES(HEAD "ground 2 by 1\n"), 4, 10, "by", "x, as in ground 14 x 8" },
	{ BYTES(HEAD "ground 1.5 x 1\n"), 4, 9, ".5", "x, as in ground 14 x 8" },
	{ BYTES(HEAD "ground 2 x\n"), 4, 11, "the end of the line", "a number of cells" },
	{ BYTES(HEAD "ground 2 x 1 x 3\n"), 4, 14, "x", "the end of the line" },
	/* rows */
	{ BYTES(HEAD "ground 2 x 1\n  .\n"), 5, 4, "the end of the line",
		"2 letters in the row, not 1" },
	{ BYTES(HEAD "ground 2 x 1\n  .  \n"), 5, 4, "the end of the line",
		"2 letters in the row, not 1" },
	{ BYTES(HEAD "ground 2 x 1\n  ...\n"), 5, 5, ".", "the end of the row after 2 letters" },
	{ BYTES(HEAD "ground 2 x 1\n  .. .\n"), 5, 6, ".", "the end of the row after 2 letters" },
	{ BYTES(HEAD "ground 2 x 1\n..\n"), 5, 1, "..", "row 1 of 1 of the ground, indented" },
	{ BYTES(HEAD "ground 2 x 2\n  ..\n\n  ..\n"), 6, 1, "the end of the line", "row 2 of 2" },
	{ BYTES(HEAD "ground 2 x 2\n  ..\n   \n  ..\n"), 6, 1, "the end of the line",
		"row 2 of 2" },
	{ BYTES(HEAD "ground 2 x 2\n  ..\nfence \"F\"\n"), 6, 1, "fence",
		"row 2 of 2 of the ground, indented" },
	{ BYTES(HEAD "ground 2 x 1\n  .b\n"), 5, 4, "b", "a letter of the legend or ." },
	{ BYTES(LEGEND "ground 2 x 1\n  bB\n"), 6, 4, "B", "a letter of the legend or ." },
	{ BYTES(LEGEND "ground 3 x 1\n  b b\n"), 6, 4, "a blank", "a letter of the legend or ." },
	{ BYTES(LEGEND "ground 3 x 1\n  b\tb\n"), 6, 4, "<09>", "a letter of the legend or ." },
	{ BYTES(LEGEND "ground 3 x 1\n  b\xC3\xA4" "b\n"), 6, 4, "\xC3\xA4",
		"a letter of the legend or ." },
	{ BYTES(LEGEND "ground 3 x 1\n  b,b\n"), 6, 4, ",", "a letter of the legend or ." },
	{ BYTES(LEGEND "ground 3 x 1\n  note \"a\"\n"), 6, 3, "n", "a letter of the legend or ." },
	/* what follows */
	{ BYTES(HEAD GROUND "  ..\n"), 6, 3, "..", "the end of the ground: its 1 rows are there" },
	{ BYTES(HEAD GROUND "\n  note \"a\"\n"), 7, 3, "note", "the end of the ground" },
	{ BYTES(HEAD GROUND "ground 2 x 1\n  ..\n"), 6, 1, "ground",
		LATER_EXPECTED },
	{ BYTES(HEAD GROUND "bed b \"Bed\"\n"), 6, 1, "bed", LATER_EXPECTED },
	{ BYTES(HEAD GROUND "\n\nrubbish\n"), 8, 1, "rubbish", LATER_EXPECTED },
	{ BYTES(HEAD GROUND "\0"), 6, 1, "<00>", "text" },
	/* the first error only */
	{ BYTES(HEAD "north x\nsite x\nunits x\n"), 4, 7, "x", "a number" },
};

/* Ground of 4 x 3 cells; a fence's lines begin on line 9. */
#define YARD HEAD "ground 4 x 3\n  ....\n  ....\n  ....\n"
#define FENCE YARD "fence \"Pickets\"\n"
#define TOP FENCE "  run 0,0 4,0\n"
#define POINT_EXPECTED "a grid point X,Y from 0,0 to 4,3"
#define LEG_EXPECTED "another point, level with the one before or straight above or below it"

static const struct bad fences[] = {
	{ BYTES(YARD "fence\n"), 8, 6, "the end of the line", "text in double quotes" },
	{ BYTES(YARD "fence \"\"\n"), 8, 7, "\"\"", "1 to 60 characters" },
	{ BYTES(YARD "fence p \"Pickets\"\n"), 8, 7, "p", "text in double quotes" },
	{ BYTES(YARD "fence \"Pickets\" new\n"), 8, 17, "new", "the end of the line" },
	{ BYTES(FENCE "  colour red\n"), 9, 3, "colour",
	  "fence: height, section, post, gate-post, gap, rails, depth, hole, gravel, inset, "
	"clearance, leaf, run, gate or note" },
	{ BYTES(FENCE "  height 3 ft\n  height 3 ft\n"), 10, 3, "height", "each keyword once" },
	{ BYTES(FENCE "  rails 7\n"), 9, 9, "7", "1 to 6" },
	{ BYTES(FENCE "  leaf bought\n  leaf 4 ft\n  leaf offcut\n"), 11, 3, "leaf",
	  "each keyword once" },
	{ BYTES(FENCE "  leaf 4 ft\n  leaf 5 ft\n"), 10, 3, "leaf", "each keyword once" },
	{ BYTES(FENCE "  leaf made\n"), 9, 8, "made", "bought or offcut" },
	{ BYTES(FENCE "  leaf 4\n"), 9, 8, "4", "a length with its unit" },
	{ BYTES(FENCE "bed b \"Bed\"\n"), 9, 1, "bed", LATER_EXPECTED },
	{ BYTES(FENCE "ground 4 x 3\n"), 9, 1, "ground", LATER_EXPECTED },
	/* points */
	{ BYTES(FENCE "  run\n"), 9, 6, "the end of the line", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0\n"), 9, 10, "the end of the line", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0 0 4 0\n"), 9, 7, "0", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0, 0 4,0\n"), 9, 7, "0,", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0 4.5,0\n"), 9, 11, "4.5,0", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0  -1,0\n"), 9, 12, "-1,0", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0 5,0\n"), 9, 11, "5,0", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0 0,4\n"), 9, 11, "0,4", POINT_EXPECTED },
	{ BYTES(FENCE "  run 5,0 0,0\n"), 9, 7, "5,0", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0 4,0,3\n"), 9, 14, ",3", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0 2,0 then\n"), 9, 15, "then", POINT_EXPECTED },
	{ BYTES(FENCE "  run 0,0 4,1\n"), 9, 11, "4,1", LEG_EXPECTED },
	{ BYTES(FENCE "  run 0,0 4,0 4,0\n"), 9, 15, "4,0", LEG_EXPECTED },
	{ BYTES(FENCE "  gate 0,0\n"), 9, 11, "the end of the line", POINT_EXPECTED },
	{ BYTES(FENCE "  gate 0,0 0,0\n"), 9, 12, "0,0", LEG_EXPECTED },
	{ BYTES(FENCE "  gate 0,0 1,1\n"), 9, 12, "1,1", LEG_EXPECTED },
	{ BYTES(FENCE "  gate 0,0 1,0 2,0\n"), 9, 16, "2,0",
		"the end of the line: a gate has two points" },
	/* legs over each other: seen at the fence's end, told where they are */
	{ BYTES(FENCE "  run 0,0 4,0 1,0\n"), 9, 15, "1,0",
		"a leg that lies over no other of its fence" },
	{ BYTES(FENCE "  run 0,0 4,0\n  run 3,0 3,1\n  run 2,0 0,0\n"), 11, 11, "0,0",
		"a leg that" },
	{ BYTES(FENCE "  run 0,0 0,3\n  run 1,3 0,3 0,2\n  height 3 ft\n"), 10, 15, "0,2",
		"a leg that" },
	{ BYTES(FENCE "  run 3,0 4,0\n  run 0,0 1,0\n  run 1,0 4,0 4,3\n"), 11, 11, "4,0",
		"a leg that" },
	{ BYTES(FENCE "  run 1,0 2,0\n  run 0,0 4,0\nfence \"B\"\n"), 10, 11, "4,0", "a leg that" },
	/* gates */
	{ BYTES(FENCE "  gate 0,0 1,0\n"), 9, 8, "0,0", "a gate that lies on one leg of a run" },
	{ BYTES(TOP "  gate 0,1 1,1\n"), 10, 8, "0,1", "a gate that lies on one leg of a run" },
	{ BYTES(TOP "  gate 0,0 0,1\n"), 10, 8, "0,0", "a gate that lies on one leg of a run" },
	{ BYTES(FENCE "  run 1,0 4,0\n  gate 0,0 2,0\n"), 10, 8, "0,0",
		"a gate that lies on one leg" },
	{ BYTES(FENCE "  run 0,0 2,0 4,0\n  gate 1,0 3,0\n"), 10, 8, "1,0",
		"a gate that lies on one leg" },
	{ BYTES(TOP "  gate 0,0 2,0\n  gate 3,0 1,0\n"), 11, 8, "3,0",
		"a gate that lies over no other" },
	{ BYTES(TOP "  gate 1,0 2,0\n  gate 1,0 2,0\n"), 11, 8, "1,0",
		"a gate that lies over no other" },
	/* the first of several */
	{ BYTES(FENCE "  run 0,0 4,0 1,0\n  rails 7\n"), 9, 15, "1,0", "a leg that" },
	{ BYTES(FENCE "  run 0,0 4,0\n  run 0,0 4,0 5,5\n"), 10, 11, "4,0", "a leg that" },
	{ BYTES(FENCE "  gate 0,0 1,0\n  rails 7\n"), 10, 9, "7", "1 to 6" },
	{ BYTES(FENCE "  gate 0,0 1,0\n  run 1,0 4,0 1,0\n"), 10, 15, "1,0", "a leg that" },
	{ BYTES(FENCE "  gate 0,1 1,1\n  run 0,0 4,0\n  gate 0,0 1,0\n  gate 0,0 1,0\n"), 9, 8,
		"0,1",
	  "a gate that lies on one leg of a run" },
	{ BYTES(FENCE "  run 0,0 4,0 1,0\nfence \"B\"\n  run 0,0 4,0 1,0\n"), 9, 15, "1,0",
		"a leg that" },
	{ BYTES(FENCE "fence \"B\"\n  gate 0,0 1,0\nfence \"C\"\n"), 10, 8, "0,0",
		"a gate that lies on" },
};

/* A line begins on line 6. */
#define HOURS_EACH "hours such as 0.05 h per each"
#define GOODS_EXPECTED "goods such as 24 each; or so many ft, m, sq-ft, m2, cu-ft, m3, lb, kg"

#define CELL_EXPECTED "a cell X,Y from 0,0 to 1,0"

static const struct bad works[] = {
	{ BYTES(HEAD GROUND "rate\n"), 6, 5, "the end of the line",
		"rate: strip, dig, hole, post, load, barrow, tamp, fabric, base, fixture or others "
		"in parterre-plot(5)" },
	{ BYTES(HEAD GROUND "rate plaster 1 h per m2\n"), 6, 6, "plaster", "rate: strip, dig, "
	"hole" },
	{ BYTES(HEAD GROUND "rate note \"a\"\n"), 6, 6, "note", "rate: strip, dig, hole" },
	{ BYTES(HEAD GROUND "rate block\n"), 6, 11, "the end of the line", HOURS_EACH },
	{ BYTES(HEAD GROUND "rate block 0.05\n"), 6, 12, "0.05", HOURS_EACH },
	{ BYTES(HEAD GROUND "rate block 0.05 h\n"), 6, 12, "0.05", HOURS_EACH },
	{ BYTES(HEAD GROUND "rate block 0.05 h per ft\n"), 6, 12, "0.05", HOURS_EACH },
	{ BYTES(HEAD GROUND "rate edging 0.1 h per each\n"), 6, 13, "0.1",
		"hours such as 0.1 h per ft or 0.3 h per m" },
	{ BYTES(HEAD GROUND "rate turf 0.1 h per m3\n"), 6, 11, "0.1",
		"hours such as 0.02 h per sq-ft or 0.2 h per m2" },
	{ BYTES(HEAD GROUND "rate dig 2 h per sq-ft\n"), 6, 10, "2",
		"hours such as 0.06 h per cu-ft or 2.2 h per m3" },
	{ BYTES(HEAD GROUND "rate block 0 h per each\n"), 6, 12, "0", "0.000001 to 1000 h per "
	"each" },
	{ BYTES(HEAD GROUND "rate block 1000.1 h per each\n"), 6, 12, "1000.1",
		"0.000001 to 1000 h per each" },
	{ BYTES(HEAD GROUND "rate block 0.0000001 h per each\n"), 6, 12, "0.0000001", HOURS_EACH },
	{ BYTES(HEAD GROUND "rate block 1 h per each more\n"), 6, 25, "more",
		"the end of the line" },
	{ BYTES(HEAD GROUND "rate block 1 h per each\nrate block 2 h per each\n"), 7, 6, "block",
		"each keyword once" },
	{ BYTES(HEAD GROUND "rate block 1 h per each\n  note \"a\"\n"), 7, 3, "note",
		"an indented line only inside a block" },
	{ BYTES(HEAD "rate block 1 h per each\n"), 4, 1, "rate", "title, units" },
	{ BYTES(HEAD GROUND "extra\n"), 6, 6, "the end of the line", "text in double quotes" },
	{ BYTES(HEAD GROUND "extra \"\" 2 each\n"), 6, 7, "\"\"", "1 to 60 characters" },
	{ BYTES(HEAD GROUND "extra \"Paint\"\n"), 6, 14, "the end of the line", GOODS_EXPECTED },
	{ BYTES(HEAD GROUND "extra \"Paint\" 2\n"), 6, 15, "2", GOODS_EXPECTED },
	{ BYTES(HEAD GROUND "extra \"Paint\" 2 tins\n"), 6, 15, "2", GOODS_EXPECTED },
	{ BYTES(HEAD GROUND "extra \"Paint\" 2 sq ft\n"), 6, 15, "2", GOODS_EXPECTED },
	{ BYTES(HEAD GROUND "extra \"Paint\" 0 each\n"), 6, 15, "0", "0.001 to 100000 each, ft" },
	{ BYTES(HEAD GROUND "extra \"Paint\" 2 each more\n"), 6, 22, "more",
		"the end of the line" },
	{ BYTES(HEAD GROUND "extra \"Paint\" 2 each\n  note \"a\"\n"), 7, 3, "note",
		"an indented line only inside a block" },
	{ BYTES(HEAD GROUND "name\n"), 6, 5, "the end of the line", CELL_EXPECTED },
	{ BYTES(HEAD GROUND "name \"Sage\"\n"), 6, 6, "\"Sage\"", CELL_EXPECTED },
	{ BYTES(HEAD GROUND "name 0 \"Sage\"\n"), 6, 6, "0", CELL_EXPECTED },
	{ BYTES(HEAD GROUND "name -1,0 \"Sage\"\n"), 6, 6, "-1,0", CELL_EXPECTED },
	{ BYTES(HEAD GROUND "name 2,0 \"Sage\"\n"), 6, 6, "2,0", CELL_EXPECTED },
	{ BYTES(HEAD GROUND "name 0,1 \"Sage\"\n"), 6, 6, "0,1", CELL_EXPECTED },
	{ BYTES(HEAD GROUND "name 0,0\n"), 6, 9, "the end of the line", "text in double quotes" },
	{ BYTES(HEAD GROUND "name 0,0 \"\"\n"), 6, 10, "\"\"", "1 to 60 characters" },
	{ BYTES(HEAD GROUND "name 0,0 \"Sage\" more\n"), 6, 17, "more", "the end of the line" },
	{ BYTES(HEAD GROUND "name 0,0 \"Sage\"\n  note \"a\"\n"), 7, 3, "note",
		"an indented line only inside a block" },
	{ BYTES(HEAD "name 0,0 \"Sage\"\n"), 4, 1, "name", "title, units" },
	{ BYTES(FENCE "rate block 1 h per each\n  rails 3\n"), 10, 3, "rails",
		"an indented line only inside a block" },
};

#define KIND_EXPECTED "water, gas, power, telecom, drain or other"
#define SERVICE YARD "service water \"Supply\" existing\n"
#define CORNER_EXPECTED "a corner X,Y, from -4096,-4096 to 4096,4096"
#define AT_EXPECTED "at X,Y, indented"
#define FROM_EXPECTED "from X,Y to X,Y, indented"

static const struct bad services[] = {
	{ BYTES(YARD "service\n"), 8, 8, "the end of the line", KIND_EXPECTED },
	{ BYTES(YARD "service steam \"S\" existing\n"), 8, 9, "steam", KIND_EXPECTED },
	{ BYTES(YARD "service \"S\" existing\n"), 8, 9, "\"S\"", KIND_EXPECTED },
	{ BYTES(YARD "service gas existing\n"), 8, 13, "existing", "text in double quotes" },
	{ BYTES(YARD "service gas \"\" existing\n"), 8, 13, "\"\"", "1 to 60 characters" },
	{ BYTES(YARD "service gas \"G\"\n"), 8, 16, "the end of the line",
		"existing or to-lay" },
	{ BYTES(YARD "service gas \"G\" new\n"), 8, 17, "new", "existing or to-lay" },
	{ BYTES(YARD "service gas \"G\" to-lay x\n"), 8, 24, "x", "the end of the line" },
	{ BYTES(SERVICE "  colour blue\n"), 9, 3, "colour",
		"service: depth, owner, trench, below, line or note" },
	{ BYTES(SERVICE "  run 0,0 4,0\n"), 9, 3, "run",
		"service: depth, owner, trench, below, line or note" },
	{ BYTES(SERVICE "  depth 33 ft\n"), 9, 9, "33", "0 in to 32 ft 9 in" },
	{ BYTES(SERVICE "  owner me\n"), 9, 9, "me", "public or private" },
	{ BYTES(SERVICE "  owner public\n  owner private\n"), 10, 3, "owner",
		"each keyword once" },
	{ BYTES(SERVICE "  line\n"), 9, 7, "the end of the line", POINT_EXPECTED },
	{ BYTES(SERVICE "  line 0,0\n"), 9, 11, "the end of the line", POINT_EXPECTED },
	{ BYTES(SERVICE "  line 0,0 5,0\n"), 9, 12, "5,0", POINT_EXPECTED },
	{ BYTES(SERVICE "  line 0,0 0,4\n"), 9, 12, "0,4", POINT_EXPECTED },
	{ BYTES(SERVICE "  line -1,0 0,0\n"), 9, 8, "-1,0", POINT_EXPECTED },
	{ BYTES(SERVICE "  line 0,0 1,1\n"), 9, 12, "1,1", LEG_EXPECTED },
	{ BYTES(SERVICE "  line 0,0 0,0\n"), 9, 12, "0,0", LEG_EXPECTED },
	{ BYTES(SERVICE "  line 0,0, 1,0\n"), 9, 11, ",", POINT_EXPECTED },
	{ BYTES(SERVICE "drop 0,0\n  depth 1 ft\n"), 10, 3, "depth", "an indented line only" },
};

/* Two plants beside a bed and a path; what follows stands on line 11. */
#define PLANTS HEAD "bed b \"Bed\"\npath p \"Path\"\nground 2 x 2\n  bp\n  ..\n" \
	"plant r \"Rose\"\n  at 1,1\n"
#define PLANT_EXPECTED "plant: spacing, spread, height, pattern, sun, soil, pot, plant-from, " \
	"plant-until, price, at, drift or note"
#define PLANT_CELL_EXPECTED "a cell X,Y from 0,0 to 1,1"
#define DRIFT_EXPECTED "the letter of a bed in the legend, or a cell X,Y"
#define BAND_EXPECTED "whole, front, middle or back"

static const struct bad plants[] = {
	{ BYTES(PLANTS "plant\n"), 11, 6, "the end of the line", "a lower-case letter" },
	{ BYTES(PLANTS "plant R \"Rose\"\n"), 11, 7, "R", "a lower-case letter" },
	{ BYTES(PLANTS "plant ro \"Rose\"\n"), 11, 7, "ro", "a lower-case letter" },
	{ BYTES(PLANTS "plant \"Rose\"\n"), 11, 7, "\"Rose\"", "a lower-case letter" },
	{ BYTES(PLANTS "plant p \"Pear\"\n"), 11, 7, "p",
		"another letter: p is in the legend already" },
	{ BYTES(PLANTS "plant r \"Reed\"\n"), 11, 7, "r", "another letter: r is a plant already" },
	{ BYTES(PLANTS "plant a\n"), 11, 8, "the end of the line", "text in double quotes" },
	{ BYTES(PLANTS "plant a \"\"\n"), 11, 9, "\"\"", "1 to 60 characters" },
	{ BYTES(PLANTS "plant a \"Aster\" 2\n"), 11, 17, "2", "the end of the line" },
	{ BYTES(PLANTS "  colour blue\n"), 11, 3, "colour", PLANT_EXPECTED },
	{ BYTES(PLANTS "  spacing 33 ft\n"), 11, 11, "33", "1 in to 32 ft 9 in" },
	{ BYTES(PLANTS "  spacing 1 ft\n  spacing 1 ft\n"), 12, 3, "spacing",
		"each keyword once" },
	{ BYTES(PLANTS "  sun much\n"), 11, 7, "much", "full, part, part-shade or shade" },
	{ BYTES(PLANTS "  at\n"), 11, 5, "the end of the line", PLANT_CELL_EXPECTED },
	{ BYTES(PLANTS "  at 2,1\n"), 11, 6, "2,1", PLANT_CELL_EXPECTED },
	{ BYTES(PLANTS "  at 1,2\n"), 11, 6, "1,2", PLANT_CELL_EXPECTED },
	{ BYTES(PLANTS "  at 0,0 1,0\n"), 11, 10, "1", "the end of the line" },
	{ BYTES(PLANTS "  at 0,0\n  at 1,1\n"), 12, 6, "1,1",
		"another cell: this plant stands there already" },
	{ BYTES(PLANTS "plant a \"A\"\n  at 1,1\n  at  1,1\n"), 13, 7, "1,1",
		"another cell: this plant stands there already" },
	{ BYTES(PLANTS "  drift\n"), 11, 8, "the end of the line", DRIFT_EXPECTED },
	{ BYTES(PLANTS "  drift front\n"), 11, 9, "front", DRIFT_EXPECTED },
	{ BYTES(PLANTS "  drift p front\n"), 11, 9, "p", DRIFT_EXPECTED },
	{ BYTES(PLANTS "  drift x front\n"), 11, 9, "x", DRIFT_EXPECTED },
	{ BYTES(PLANTS "  drift r front\n"), 11, 9, "r", DRIFT_EXPECTED },
	{ BYTES(PLANTS "  drift 2,0 front\n"), 11, 9, "2,0", PLANT_CELL_EXPECTED },
	{ BYTES(PLANTS "  drift b\n"), 11, 10, "the end of the line", BAND_EXPECTED },
	{ BYTES(PLANTS "  drift b side\n"), 11, 11, "side", BAND_EXPECTED },
	{ BYTES(PLANTS "  drift b front 2\n"), 11, 17, "2", "the end of the line" },
	{ BYTES(PLANTS "drop 0,0\n  at 0,0\n"), 12, 3, "at", "an indented line only" },
};

static const struct bad obstacles[] = {
	{ BYTES(YARD "house 2 ft\n"), 8, 7, "2", "text in double quotes" },
	{ BYTES(YARD "house \"H\" 2\n"), 8, 11, "2", "a length with its unit, such as 2 in" },
	{ BYTES(YARD "house \"H\" 0 in\n"), 8, 11, "0", "1 in to 328 ft 1 in" },
	{ BYTES(YARD "house \"H\" 329 ft\n"), 8, 11, "329", "1 in to 328 ft 1 in" },
	{ BYTES(YARD "house \"H\" 2 ft x\n"), 8, 16, "x", "the end of the line" },
	{ BYTES(YARD "house \"H\" 2 ft\n"), 9, 1, "the end of the file", FROM_EXPECTED },
	{ BYTES(YARD "shade 2 ft\n"), 8, 7, "2", "text in double quotes" },
	{ BYTES(YARD "shade \"S\"\n"), 8, 10, "the end of the line", "a length with its unit" },
	{ BYTES(YARD "shade \"S\" 0 in\n"), 8, 11, "0", "1 in to 328 ft 1 in" },
	{ BYTES(YARD "shade \"S\" 329 ft\n"), 8, 11, "329", "1 in to 328 ft 1 in" },
	{ BYTES(YARD "shade \"S\" 2 ft x\n"), 8, 16, "x", "the end of the line" },
	{ BYTES(YARD "shade \"S\" 2 ft\n"), 9, 1, "the end of the file", FROM_EXPECTED },
	{ BYTES(YARD "shade \"S\" 2 ft\n  at 0,0\n"), 9, 3, "at", "from X,Y to X,Y, or note" },
	{ BYTES(YARD "house \"H\"\n  at 0,0\n"), 9, 3, "at", "from X,Y to X,Y, or note" },
	{ BYTES(YARD "house \"H\"\n"), 9, 1, "the end of the file", FROM_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  note \"N\"\nhouse \"I\"\n"), 10, 1, "house",
		FROM_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from\n"), 9, 7, "the end of the line", CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0\n"), 9, 8, "0", CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0,-4097 to 1,1\n"), 9, 8, "0,-4097",
		CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0,+1 to 1,1\n"), 9, 8, "0,+1", CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0,0.5 to 1,1\n"), 9, 8, "0,0.5", CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0,0 1,1\n"), 9, 12, "1,1",
		"to, as in from -2,-12 to 14,-2" },
	{ BYTES(YARD "house \"H\"\n  from 0,0 to\n"), 9, 14, "the end of the line",
		CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0,0 to 4097,1\n"), 9, 15, "4097,1",
		CORNER_EXPECTED },
	{ BYTES(YARD "house \"H\"\n  from 0,0 to 0,1\n"), 9, 15, "0,1", "a corner right of" },
	{ BYTES(YARD "house \"H\"\n  from 0,0 to 1,0\n"), 9, 15, "1,0", "a corner right of" },
	{ BYTES(YARD "house \"H\"\n  from 0,0 to 1,1 2,2\n"), 9, 19, "2",
		"the end of the line" },
	{ BYTES(YARD "house \"H\"\n  from 0,0 to 1,1\n  from 2,0 to 3,1\n"), 10, 3, "from",
		"each keyword once" },
	{ BYTES(YARD "keep \"K\" 0 in\n"), 8, 10, "0", "1 in to 328 ft 1 in" },
	{ BYTES(YARD "keep \"K\" 329 ft\n"), 8, 10, "329", "1 in to 328 ft 1 in" },
	{ BYTES(YARD "keep \"K\" 6\n"), 8, 10, "6", "a length with its unit, such as 6 in" },
	{ BYTES(YARD "keep \"K\" 6 ft x\n"), 8, 15, "x", "the end of the line" },
	{ BYTES(YARD "keep \"K\" 6 ft\n"), 9, 1, "the end of the file", AT_EXPECTED },
	{ BYTES(YARD "keep \"K\" 6 ft\ndrop 0,0\n"), 9, 1, "drop", AT_EXPECTED },
	{ BYTES(YARD "keep \"K\" 6 ft\n  from 0,0 to 1,1\n"), 9, 3, "from",
		"at X,Y, or note" },
	{ BYTES(YARD "keep \"K\" 6 ft\n  at 0,4\n"), 9, 6, "0,4", POINT_EXPECTED },
	{ BYTES(YARD "keep \"K\" 6 ft\n  at 0,0 1,1\n"), 9, 10, "1", "the end of the line" },
	{ BYTES(YARD "keep \"K\" 6 ft\n  at 0,0\n  at 1,1\n"), 10, 3, "at",
		"each keyword once" },
	{ BYTES(YARD "keep \"K\"\n  at 0,0\n"), 9, 3, "at", "from X,Y to X,Y, or note" },
	{ BYTES(YARD "keep \"K\"\n  note \"\"\n"), 9, 8, "\"\"", "1 to 500 characters" },
	{ BYTES(YARD "tie \"T\" 6 ft\n"), 8, 5, "\"T\"", POINT_EXPECTED },
	{ BYTES(YARD "tie 5,0 \"T\" 6 ft\n"), 8, 5, "5,0", POINT_EXPECTED },
	{ BYTES(YARD "tie 0,0 6 ft\n"), 8, 9, "6", "text in double quotes" },
	{ BYTES(YARD "tie 0,0 \"T\"\n"), 8, 12, "the end of the line", "a length with its unit" },
	{ BYTES(YARD "tie 0,0 \"T\" 0 in\n"), 8, 13, "0", "1 in to 3280 ft 10 in" },
	{ BYTES(YARD "tie 0,0 \"T\" 1 ft x\n"), 8, 18, "x", "the end of the line" },
	{ BYTES(YARD "drop\n"), 8, 5, "the end of the line", POINT_EXPECTED },
	{ BYTES(YARD "drop 4,4\n"), 8, 6, "4,4", POINT_EXPECTED },
	{ BYTES(YARD "drop 0,0 x\n"), 8, 10, "x", "the end of the line" },
	{ BYTES(YARD "drop 0,0\ndrop 0,0\n"), 9, 1, "drop", "each keyword once" },
	{ BYTES(YARD "plants r\n"), 8, 1, "plants", LATER_EXPECTED },
	{ BYTES(YARD "tap 4,4\n"), 8, 5, "4,4", POINT_EXPECTED },
	{ BYTES(YARD "tap 0,0\ntap 0,0\n"), 9, 1, "tap", "each keyword once" },
	/* legs of a fence that were read come before in the file, what is lacking does not */
	{ BYTES(TOP "  run 2,0 3,0\nkeep \"K\"\ndrop 0,0\n"), 10, 11, "3,0", "a leg that lies" },
	{ BYTES(YARD "keep \"K\"\n  at\nrubbish\n"), 9, 3, "at", "from X,Y to X,Y, or note" },
};

/* 4 x 3 ft: two drops and two rows of 4 ft, three of two of 2 ft. */
static const struct bad levels[] = {
	{ BYTES(YARD "levels\n"), 8, 7, "the end of the line", "a length with its unit" },
	{ BYTES(YARD "levels 1/2 in\n"), 8, 8, "1/2", "1 in to 3280 ft 10 in" },
	{ BYTES(YARD "levels 3281 ft\n"), 8, 8, "3281", "1 in to 3280 ft 10 in" },
	{ BYTES(YARD "levels 4 ft x\n"), 8, 13, "x", "the end of the line" },
	{ BYTES(YARD "levels 4 ft\n"), 9, 1, "the end of the file",
		"row 1 of 2 of the levels, indented" },
	{ BYTES(YARD "levels 4 ft\n  0 in, 0 in\n"), 10, 1, "the end of the file",
		"row 2 of 2 of the levels, indented" },
	{ BYTES(YARD "levels 4 ft\n  0 in, 0 in\ndrop 0,0\n"), 10, 1, "drop",
		"row 2 of 2 of the levels, indented" },
	{ BYTES(YARD "levels 4 ft\n  0 in\n"), 9, 7, "the end of the line",
		"a comma: 2 drops are in a row, not 1" },
	{ BYTES(YARD "levels 4 ft\n  0 in 1 in\n"), 9, 8, "1",
		"a smaller unit than the one before it" },
	{ BYTES(YARD "levels 4 ft\n  0 in x 1 in\n"), 9, 8, "x",
		"a comma: 2 drops are in a row, not 1" },
	{ BYTES(YARD "levels 2 ft\n  0 in, 1 in\n"), 9, 13, "the end of the line",
		"a comma: 3 drops are in a row, not 2" },
	{ BYTES(YARD "levels 4 ft\n  0 in, 1 in, 2 in\n"), 9, 13, ",",
		"the end of the row after 2 drops" },
	{ BYTES(YARD "levels 4 ft\n  0 in,\n"), 9, 8, "the end of the line",
		"a length with its unit" },
	{ BYTES(YARD "levels 4 ft\n  0, 1 in\n"), 9, 3, "0", "a length with its unit" },
	{ BYTES(YARD "levels 4 ft\n  -1 in, 1 in\n"), 9, 3, "-1", "a length with its unit" },
	{ BYTES(YARD "levels 4 ft\n  0 in, 33 ft\n"), 9, 9, "33", "0 in to 32 ft 9 in" },
	{ BYTES(YARD "levels 4 ft\n  note \"N\"\n"), 9, 3, "note", "a length with its unit" },
	{ BYTES(YARD "levels 4 ft\n  0 in, 0 in\n  0 in, 0 in\n  0 in, 0 in\n"), 11, 3, "0",
		"the end of the levels: their 2 rows are there" },
	{ BYTES(YARD "levels 4 ft\n  0 in, 0 in\n  0 in, 0 in\nlevels 4 ft\n"), 11, 1, "levels",
		"each keyword once" },
	{ BYTES("parterre-plot 1\nunits metric\ncell 2 m\nground 10 x 1\n  ..........\n"
		"levels 100 mm\n"), 6, 8, "100",
		"a longer step: at most 200 drops in a row and 200 rows" },
	{ BYTES(YARD "finish 5,0 0 in\n"), 8, 8, "5,0", POINT_EXPECTED },
	{ BYTES(YARD "finish 0,0\n"), 8, 11, "the end of the line", "a length with its unit" },
	{ BYTES(YARD "finish 0,0 33 ft\n"), 8, 12, "33", "0 in to 32 ft 9 in" },
	{ BYTES(YARD "finish 0,0 1 ft x\n"), 8, 17, "x", "the end of the line" },
	{ BYTES(YARD "finish 0,0 1 ft\nfinish 0,0 1 ft\n"), 9, 1, "finish", "each keyword once" },
	{ BYTES(YARD "fall\n"), 8, 5, "the end of the line", "a percentage such as 5 %" },
	{ BYTES(YARD "fall 2 away\n"), 8, 6, "2", "a percentage such as 5 %" },
	{ BYTES(YARD "fall 101 % away\n"), 8, 6, "101", "0 % to 100 %" },
	{ BYTES(YARD "fall 2 %\n"), 8, 9, "the end of the line", "towards or away" },
	{ BYTES(YARD "fall 2 % north\n"), 8, 10, "north", "towards or away" },
	{ BYTES(YARD "fall 2 % towards\n"), 8, 17, "the end of the line", "a number" },
	{ BYTES(YARD "fall 2 % towards 360\n"), 8, 18, "360", "0 to 359.999999" },
	{ BYTES(YARD "fall 2 % towards -1\n"), 8, 18, "-1", "a number" },
	{ BYTES(YARD "fall 2 % away 90\n"), 8, 15, "90", "the end of the line" },
	{ BYTES(YARD "fall 2 % away\nfall 2 % away\n"), 9, 1, "fall", "each keyword once" },
};

#define REFUSED(name, table) \
	START_TEST(name) \
	{ \
		check_refused(&(table)[_i]); \
	} \
	END_TEST

REFUSED(a_first_line_that_is_no_plots_is_refused, first_lines)
REFUSED(bytes_that_no_plot_holds_are_refused, bytes)
REFUSED(what_is_wrong_in_the_head_is_refused, heads)
REFUSED(what_is_wrong_in_the_legend_is_refused, legends)
REFUSED(what_is_missing_is_named, missing)
REFUSED(what_is_wrong_in_the_ground_is_refused, grounds)
REFUSED(what_is_wrong_in_a_fence_is_refused, fences)
REFUSED(what_is_wrong_in_a_service_is_refused, services)
REFUSED(what_is_wrong_in_a_plant_is_refused, plants)
REFUSED(what_is_wrong_with_houses_things_kept_ties_and_drop_is_refused, obstacles)
REFUSED(what_is_wrong_with_levels_is_refused, levels)
REFUSED(what_is_wrong_with_rates_and_extra_goods_is_refused, works)

START_TEST(a_run_has_64_points_and_no_more)
{
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;

	for (int points = 63; points <= 65; points++) {
		text_clear(&text);
		text_add(&text, HEAD "ground 40 x 40\n");
		for (int y = 0; y < 40; y++)
			text_print(&text, "  %.*s\n", 40,
				"........................................");
		text_add(&text, "fence \"Stairs\"\n  run");
		for (int i = 0; i < points; i++)
			text_print(&text, " %d,%d", (i + 1) / 2, i / 2);
		ck_assert_int_eq(read_bytes(text.bytes, text.length, &plot, &d), points <= 64);
		plot_fini(&plot);
	}
	ck_assert_int_eq(d.line, 46);
	ck_assert_str_eq(d.found, "32,32");
	ck_assert_str_eq(d.expected, "the end of the line: 64 points at most");
	text_fini(&text);
}
END_TEST

/* A file of the greatest size, all of it short legs in one fence, then short gates: it takes no
 * longer for each the more there are. */
START_TEST(very_many_legs_and_gates_are_read_in_reasonable_time)
{
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;

	text_add(&text, HEAD "ground 2048 x 500\n");
	for (int y = 0; y < 500; y++) {
		text_add(&text, "  ");
		text_add_repeat(&text, '.', 2048);
		text_add(&text, "\n");
	}
	text_add(&text, "fence \"Dashes\"\n");
	for (int i = 0; i < 200000; i++)
		text_print(&text, "  run %d,%d %d,%d\n", i % 1024 * 2, i / 1024, i % 1024 * 2 + 1,
			i / 1024);
	for (int i = 0; i < 200000; i++)
		text_print(&text, "  gate %d,%d %d,%d\n", i % 1024 * 2, i / 1024, i % 1024 * 2 + 1,
			i / 1024);
	ck_assert(read_bytes(text.bytes, text.length, &plot, &d));
	ck_assert_uint_eq(plot.details.fences[0].gates.count, 200000);
	plot_fini(&plot);
	text_add(&text, "  gate 0,0 1,0\n");
	ck_assert(!read_bytes(text.bytes, text.length, &plot, &d));
	ck_assert_int_eq(d.line, 4 + 500 + 1 + 400000 + 1);
	text_fini(&text);
}
END_TEST

START_TEST(another_version_is_refused_by_a_message_that_names_both)
{
	struct plot plot;
	struct diag d;

	ck_assert(!read_bytes(BYTES("parterre-plot 17\nunits metric\n"), &plot, &d));
	ck_assert_str_eq(d.found, "17");
	ck_assert_ptr_nonnull(strstr(d.expected, "version 1"));
}
END_TEST

/* HEAD, then a title of which the line has the length, then ground. */
static void long_line(struct text *text, size_t length, const char *end)
{
	text_clear(text);
	text_add(text, HEAD "title \"a\"");
	text_add_repeat(text, ' ', length - 9);
	text_add(text, end);
	text_add(text, GROUND);
}

START_TEST(a_line_may_have_4096_bytes_and_no_more)
{
	static const char *const ends[] = { "\n", "\r\n" };
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;

	for (int i = 0; i < 2; i++) {
		long_line(&text, 4096, ends[i]);
		ck_assert(read_bytes(text.bytes, text.length, &plot, &d));
		plot_fini(&plot);
		long_line(&text, 4097, ends[i]);
		ck_assert(!read_bytes(text.bytes, text.length, &plot, &d));
		ck_assert_int_eq(d.line, 4);
		ck_assert_int_eq(d.column, 4097);
		ck_assert_str_eq(d.found, "a longer line");
		ck_assert_str_eq(d.expected, "a line of at most 4096 bytes");
	}
	text_fini(&text);
}
END_TEST

START_TEST(a_long_line_is_refused_where_a_character_crosses_its_end)
{
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;

	text_add(&text, HEAD "title \"");
	while (text.length < sizeof HEAD - 1 + 4095)
		text_add(&text, "a");
	text_add(&text, "\xE2\x82\xAC\"\n" GROUND);
	ck_assert(!read_bytes(text.bytes, text.length, &plot, &d));
	ck_assert_int_eq(d.line, 4);
	ck_assert_int_eq(d.column, 4097);
	ck_assert_str_eq(d.found, "a longer line");
	text_fini(&text);
}
END_TEST

START_TEST(a_long_binary_file_is_refused_for_what_it_is)
{
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;

	text_add(&text, "GIF89a");
	text_add_repeat(&text, '\xF0', 10000);
	ck_assert(!read_bytes(text.bytes, text.length, &plot, &d));
	ck_assert_int_eq(d.line, 1);
	ck_assert_int_eq(d.column, 7);
	ck_assert_str_eq(d.found, "<F0>");
	text_fini(&text);
}
END_TEST

/* Characters, not bytes. */
static bool text_of_length(const char *before, int length, const char *after)
{
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;
	bool done;

	text_print(&text, HEAD "%s\"", before);
	for (int i = 0; i < length; i++)
		text_add(&text, "\xF0\x9F\x8C\xB1");
	text_print(&text, "\"\n%s" GROUND, after);
	done = read_bytes(text.bytes, text.length, &plot, &d);
	plot_fini(&plot);
	text_fini(&text);
	return done;
}

START_TEST(texts_have_their_most_characters)
{
	ck_assert(text_of_length("title ", 0, "") && text_of_length("title ", 120, ""));
	ck_assert(!text_of_length("title ", 121, ""));
	ck_assert(!text_of_length("note ", 0, "") && text_of_length("note ", 1, ""));
	ck_assert(text_of_length("note ", 500, "") && !text_of_length("note ", 501, ""));
	ck_assert(!text_of_length("prices ", 0, "") && text_of_length("prices ", 1, ""));
	ck_assert(text_of_length("prices ", 255, "") && !text_of_length("prices ", 256, ""));
	ck_assert(!text_of_length("notice ", 0, "") && text_of_length("notice ", 1, ""));
	ck_assert(text_of_length("notice ", 60, "") && !text_of_length("notice ", 61, ""));
	ck_assert(!text_of_length("notice-end ", 0, "") && text_of_length("notice-end ", 1, ""));
	ck_assert(text_of_length("notice-end ", 60, "") && !text_of_length("notice-end ", 61, ""));
	ck_assert(!text_of_length("bed b ", 0, "") && text_of_length("bed b ", 1, ""));
	ck_assert(text_of_length("bed b ", 60, "") && !text_of_length("bed b ", 61, ""));
	ck_assert(text_of_length("bed b \"B\"\n  note ", 500, ""));
	ck_assert(!text_of_length("bed b \"B\"\n  note ", 501, ""));
}
END_TEST

START_TEST(a_file_may_have_16_mib_and_no_more)
{
	struct text text = TEXT_EMPTY;
	struct plot plot;
	struct diag d;

	text_add(&text, HEAD GROUND);
	while (text.length < FORMAT_BYTES_MOST)
		text_add_repeat(&text, '\n', FORMAT_BYTES_MOST - text.length);
	ck_assert_uint_eq(text.length, 16 * 1024 * 1024);
	ck_assert(read_bytes(text.bytes, text.length, &plot, &d));
	plot_fini(&plot);
	text_add(&text, "\n");
	ck_assert(!read_bytes(text.bytes, text.length, &plot, &d));
	ck_assert_int_eq(d.line, 0);
	ck_assert_int_eq(d.column, 0);
	ck_assert_str_eq(d.found, "a larger file");
	ck_assert_str_eq(d.expected, "a plot of at most 16 MiB");
	check_is_empty(&plot);
	text_fini(&text);
}
END_TEST

/* Of a step as long as a cell there is a drop more than there are cells. */
START_TEST(levels_have_200_drops_in_a_row_and_200_rows_and_no_more)
{
	static const struct { int columns, rows; bool fits; } sizes[] = { { 199, 1, true },
		{ 200, 1, false }, { 1, 199, true }, { 1, 200, false } };
	struct text text = TEXT_EMPTY;

	for (int i = 0; i < COUNT(sizes); i++) {
		struct plot plot;
		struct diag d = { 0 };

		text_clear(&text);
		text_print(&text, HEAD "ground %d x %d\n", sizes[i].columns, sizes[i].rows);
		for (int y = 0; y < sizes[i].rows; y++) {
			text_add(&text, "  ");
			text_add_repeat(&text, '.', (size_t)sizes[i].columns);
			text_add(&text, "\n");
		}
		text_add(&text, "levels 1 ft\n");
		ck_assert(!read_bytes(text.bytes, text.length, &plot, &d));
		ck_assert_int_eq(d.line, 5 + sizes[i].rows + sizes[i].fits);
		ck_assert_int_eq(strncmp(d.expected, sizes[i].fits ? "row 1 of " :
			"a longer step", 9), 0);
	}
	text_fini(&text);
}
END_TEST

/* ---- Line by line ---------------------------------------------------------------------------- */

/* A line as it might be written by mistake. */
enum slip { LINE_TWICE, LINE_LEFT_OUT, LINE_CUT, LINE_LONGER, LINE_OF_ANOTHER_WORD, LINE_MOVED_IN };
enum { SLIPS = LINE_MOVED_IN + 1 };

static void slip_add(struct text *out, const char *line, int length, enum slip slip)
{
	int cut = length, blanks = (int)strspn(line, " ");

	while (cut > blanks && line[cut - 1] != ' ')
		cut--;
	switch (slip) {
	case LINE_TWICE:
		text_print(out, "%.*s\n%.*s\n", length, line, length, line);
		break;
	case LINE_LEFT_OUT:
		break;
	case LINE_CUT:
		text_print(out, "%.*s\n", cut, line);
		break;
	case LINE_LONGER:
		text_print(out, "%.*s ,x\n", length, line);
		break;
	case LINE_OF_ANOTHER_WORD:
		text_print(out, "%.*sz%.*s\n", blanks, line, length - blanks, line + blanks);
		break;
	case LINE_MOVED_IN:
		text_print(out, "%s%.*s\n", blanks ? "" : "  ", length - blanks, line + blanks);
		break;
	}
}

/* What is said of a plot; nothing where it can be read. */
static void said_add(struct text *out, const struct text *plot, const char *slip, int line)
{
	struct plot read;
	struct diag d = { 0 };

	if (read_bytes(plot->bytes, plot->length, &read, &d)) {
		plot_fini(&read);
		return;
	}
	check_is_empty(&read);
	text_print(out, "%d %s: %d:%d: found %s, expected %s\n", line, slip, d.line, d.column,
		d.found, d.expected);
}

/* All that can be said of what is written in them, with its place. */
START_TEST(whatever_goes_wrong_with_a_line_is_told_with_its_place)
{
	static const char *const slips[SLIPS] = { "twice", "left out", "cut", "longer",
		"of another word", "moved in or out" };
	static const int plots[] = { 2, 4, 6, 7, 8, 10 };
	struct text said = TEXT_EMPTY, changed = TEXT_EMPTY;

	for (int i = 0; i < COUNT(plots); i++) {
		const char *text = canonical[plots[i]], *end;
		int number = 1;

		text_print(&said, "%s%s\n", i ? "\n" : "", text);
		for (const char *at = text; *at; at = end + 1, number++) {
			end = strchr(at, '\n');
			for (int slip = 0; slip < SLIPS && end > at; slip++) {
				text_clear(&changed);
				text_add_bytes(&changed, text, (size_t)(at - text));
				slip_add(&changed, at, (int)(end - at), (enum slip)slip);
				text_add(&changed, end + 1);
				said_add(&said, &changed, slips[slip], number);
			}
		}
	}
	golden_check("format-said.txt", said.bytes);
	text_fini(&said);
	text_fini(&changed);
}
END_TEST

/* ---- There and back -------------------------------------------------------------------------- */

static void check_round_trip(const struct plot *plot, uint64_t seed)
{
	struct text first = TEXT_EMPTY, second = TEXT_EMPTY;
	struct plot again;
	struct diag d = { 0 };

	plot_check(plot);
	format_write(plot, &first);
	ck_assert_msg(read_bytes(first.bytes, first.length, &again, &d),
		"seed %d: %d:%d: found %s, expected %s\n%s", (int)seed, d.line, d.column, d.found,
		d.expected, first.bytes);
	ck_assert_msg(plot_equal(plot, &again), "seed %d\n%s", (int)seed, first.bytes);
	format_write(&again, &second);
	ck_assert_str_eq(first.bytes, second.bytes);
	text_fini(&first);
	text_fini(&second);
	plot_fini(&again);
}

START_TEST(whatever_a_plot_holds_is_written_and_read_as_it_was)
{
	for (uint64_t seed = 0; seed < 600; seed++) {
		struct random random = { seed };
		struct plot plot;

		whole_plot_at_random(&plot, &random, 30);
		check_round_trip(&plot, seed);
		plot_fini(&plot);
	}
}
END_TEST

/* Whether what is read of a text is a plot; then it is equal to the other just where it is written
 * as the other is. */
static bool check_other(const struct plot *plot, const struct text *text,
	const struct text *changed, uint64_t seed)
{
	struct text written = TEXT_EMPTY;
	struct plot other;
	struct diag d = { 0 };

	if (!read_bytes(changed->bytes, changed->length, &other, &d))
		return false;
	format_write(&other, &written);
	ck_assert_msg(plot_equal(plot, &other) == (strcmp(written.bytes, text->bytes) == 0) &&
		plot_equal(&other, plot) == plot_equal(plot, &other), "seed %d:\n%.2000s",
		(int)seed, changed->bytes);
	text_fini(&written);
	plot_fini(&other);
	return true;
}

/* Another digit, or another letter, one place further in the alphabet. */
static bool change_byte(char *c)
{
	if (*c >= '0' && *c <= '9')
		*c = *c == '9' ? '1' : (char)(*c + 1);
	else if (*c >= 'a' && *c < 'z')
		++*c;
	else
		return false;
	return true;
}

/* Every line has one byte changed, and is left out. */
START_TEST(plots_are_equal_where_they_are_written_alike_and_nowhere_else)
{
	int others = 0;

	for (uint64_t seed = 0; seed < (uint64_t)runner_count(30, 2000); seed++) {
		struct random random = { seed };
		struct text text = TEXT_EMPTY, changed = TEXT_EMPTY;
		struct plot plot;

		whole_plot_at_random(&plot, &random, 5);
		format_write(&plot, &text);
		for (size_t at = 0, end; at < text.length; at = end + 1) {
			char *c;

			end = (size_t)(strchr(text.bytes + at, '\n') - text.bytes);
			text_clear(&changed);
			text_add(&changed, text.bytes);
			c = changed.bytes + at + random_below(&random, (int)(end - at) + 1);
			if (change_byte(c))
				others += check_other(&plot, &text, &changed, seed);
			text_cut(&changed, at);
			text_add(&changed, text.bytes + end + 1);
			others += check_other(&plot, &text, &changed, seed);
		}
		text_fini(&text);
		text_fini(&changed);
		plot_fini(&plot);
	}
	ck_assert_int_gt(others, 1000);
}
END_TEST

START_TEST(the_largest_plot_is_written_and_read_as_it_was)
{
	struct random random = { 1 };
	struct plot plot;

	plot_init(&plot);
	ground_init(&plot.ground, SIDE_MOST, SIDE_MOST);
	details_at_random(&plot, &random, 52);
	for (int i = 0; i < SIDE_MOST * SIDE_MOST; i++)
		plot.ground.cells[i] = plot.details.legend[(size_t)i * 7 %
			plot.details.legend_count].letter;
	check_round_trip(&plot, 1);
	plot_fini(&plot);
}
END_TEST

/* Any plot cut short anywhere is refused, at its end, and leaves nothing; but for what stands
 * behind the last row. */
START_TEST(a_plot_cut_short_is_refused_and_leaves_nothing)
{
	const char *text = canonical[2];
	size_t whole = strlen(text) - 1;

	for (size_t length = 0; length < whole; length++) {
		struct plot plot;
		struct diag d = { 0 };

		ck_assert_msg(!read_bytes(text, length, &plot, &d), "%zu bytes", length);
		ck_assert_int_ge(d.line, 1);
		ck_assert_int_ge(d.column, 1);
		ck_assert_str_ne(d.expected, "");
		check_is_empty(&plot);
	}
}
END_TEST

static void add_reading(TCase *reading)
{
	tcase_add_loop_test(reading, a_canonical_plot_is_written_as_it_was_read, 0,
		COUNT(canonical));
	tcase_add_test(reading, the_sample_plots_are_written_as_they_were_read);
	tcase_add_loop_test(reading, every_valid_spelling_gives_the_canonical_plot, 0,
		COUNT(spellings));
	tcase_add_test(reading, what_is_read_stands_in_the_model);
}

static void add_refusing(TCase *refusing)
{
	tcase_add_loop_test(refusing, a_first_line_that_is_no_plots_is_refused, 0,
		COUNT(first_lines));
	tcase_add_loop_test(refusing, bytes_that_no_plot_holds_are_refused, 0, COUNT(bytes));
	tcase_add_loop_test(refusing, what_is_wrong_in_the_head_is_refused, 0, COUNT(heads));
	tcase_add_loop_test(refusing, what_is_wrong_in_the_legend_is_refused, 0, COUNT(legends));
	tcase_add_loop_test(refusing, what_is_missing_is_named, 0, COUNT(missing));
	tcase_add_loop_test(refusing, what_is_wrong_in_the_ground_is_refused, 0, COUNT(grounds));
	tcase_add_loop_test(refusing, what_is_wrong_in_a_fence_is_refused, 0, COUNT(fences));
	tcase_add_loop_test(refusing, what_is_wrong_in_a_service_is_refused, 0, COUNT(services));
	tcase_add_loop_test(refusing, what_is_wrong_in_a_plant_is_refused, 0, COUNT(plants));
	tcase_add_loop_test(refusing,
		what_is_wrong_with_houses_things_kept_ties_and_drop_is_refused, 0,
		COUNT(obstacles));
	tcase_add_loop_test(refusing, what_is_wrong_with_levels_is_refused, 0, COUNT(levels));
	tcase_add_loop_test(refusing, what_is_wrong_with_rates_and_extra_goods_is_refused, 0,
		COUNT(works));
	tcase_add_test(refusing, levels_have_200_drops_in_a_row_and_200_rows_and_no_more);
	tcase_add_test(refusing, whatever_goes_wrong_with_a_line_is_told_with_its_place);
	tcase_add_test(refusing, a_run_has_64_points_and_no_more);
	tcase_add_test(refusing, another_version_is_refused_by_a_message_that_names_both);
	tcase_add_test(refusing, a_line_may_have_4096_bytes_and_no_more);
	tcase_add_test(refusing, a_long_line_is_refused_where_a_character_crosses_its_end);
	tcase_add_test(refusing, a_long_binary_file_is_refused_for_what_it_is);
	tcase_add_test(refusing, texts_have_their_most_characters);
	tcase_add_test(refusing, a_file_may_have_16_mib_and_no_more);
}

Suite *test_suite(void)
{
	Suite *suite = suite_create("format");
	TCase *both = suite_case(suite, "there and back"), *many = suite_case(suite, "many");

	add_reading(suite_case(suite, "reading"));
	add_refusing(suite_case(suite, "refusing"));
	tcase_add_test(many, very_many_legs_and_gates_are_read_in_reasonable_time);
	tcase_add_test(both, whatever_a_plot_holds_is_written_and_read_as_it_was);
	tcase_add_test(both, plots_are_equal_where_they_are_written_alike_and_nowhere_else);
	tcase_add_test(both, the_largest_plot_is_written_and_read_as_it_was);
	tcase_add_test(both, a_plot_cut_short_is_refused_and_leaves_nothing);
	return suite;
}
