/* Sentences of a takeoff that are said only of plots they are about. */
#include "report/text/print.h"
#include "support/garden.h"
#include "support/runner.h"

#include <string.h>

static struct garden garden;
static struct text text;

static void setup(void)
{
	text = TEXT_EMPTY;
}

static void teardown(void)
{
	garden_fini(&garden);
	text_fini(&text);
}

/* The takeoff as text, its lines joined: the whole, then its parts with all that explains them. */
static void print(void)
{
	garden_count(&garden);
	text_clear(&text);
	garden_print(&garden, &text, "said.plot", PARTS_ALL);
	garden_print(&garden, &text, "said.plot", PARTS_ALL & ~(1u << PART_FRONT));
	char *to = text.bytes;

	for (const char *c = text.bytes; *c; c++) {
		bool is_end = *c == '\n';

		*to++ = is_end ? ' ' : *c;
		if (is_end)
			c += strspn(c + 1, " ");
	}
	*to = '\0';
}

static bool says(const char *words)
{
	return strstr(text.bytes, words) != NULL;
}

/* Walls, paths and pads: 4 in of base and 2 in of surface or embed each; then walls set deeper. */
START_TEST(whether_walls_paths_and_fixtures_share_one_level)
{
	garden_rows(&garden, (const char *[]){ "bbbbbbbbp", "bbbbbbbbp", "bbbbbbbbp", "bbbbbbbbp",
		"ppppppppp", "ppppSSppp", NULL });
	print();
	ck_assert(says("One level: walls, paths, fixtures, all dug 6 in below finished "
		"ground."));
	plot_set(&garden.plot, 'b', BED_EMBED, "3 1/2 in");
	print();
	ck_assert(says("The dig is stepped; below finished ground: walls 7 1/2 in, paths 6 in, "
		"fixtures 6 in."));
	ck_assert(!says("One level"));
}
END_TEST

/* Two paths of their own depth are one kind. */
START_TEST(a_kind_of_several_depths_is_told_from_the_least_to_the_most)
{
	garden_rows(&garden, (const char *[]){ "ppSqq", NULL });
	plot_set(&garden.plot, 'p', PATH_SURFACE, "2 in");
	plot_set(&garden.plot, 'q', PATH_SURFACE, "3 in");
	plot_set(&garden.plot, 'q', PATH_BASE, "6 in");
	print();
	ck_assert(says("The dig is stepped; below finished ground: paths 6 in to 9 in, fixtures 7 "
		"in."));
	garden_fini(&garden);
	garden_rows(&garden, (const char *[]){ "ppqq", NULL });
	plot_set(&garden.plot, 'q', PATH_BASE, "6 in");
	print();
	ck_assert(!says("One level") && !says("stepped"));
}
END_TEST

/* What only some plots have: rows of one that has it, and the words that tell of it. */
static const struct { const char *rows[7], *words; } told[] = {
	{ { "bbbbbbbb....", "bbbbbbbb....", "bbbbbbbb....", "bbbbbbbb....", "bbbbbbbbbbbb",
		"bbbbbbbbbbbb", NULL }, "; with a minus: before that corner." },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		" Above: the wall, over finished ground. In ground: from there "
		"down to the base." },
	{ { "dddddddd", "dddddddd", "dddddddd", "dddddddd", NULL },
		" Above: the wall with its cap, over finished ground. In ground: from there "
		"down to the base." },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		" Adhesive: 2 beads under every course but the first, none in upright joints." },
	{ { "dddddddd", "dddddddd", "dddddddd", "dddddddd", NULL },
		" Adhesive: 2 beads under every course but the first and under the cap, " },

	{ { "pppp", "qqqq", NULL },
		"Two letters of one kind side by side count as path and path." },
	{ { "llll", "mmmm", NULL }, "count as lawn and lawn." },
	{ { "cccc", "cccc", NULL }, " Edging along ground-level beds: 12 ft in 4 runs: " },
	{ { "pppp", "....", NULL },
		" Edging along paths, not where there is another path: 10 ft" },
	{ { "ppSS", "....", NULL }, " not where there is a fixture or another path: 5 ft" },
	{ { "pppp", "cccc", NULL }, " Edging along paths and ground-level beds, not where there is "
		"another path: 16 ft" },
	{ { "cccc", "cccc", NULL }, " Amended: a layer of that depth is spread and dug in." },
	{ { "llll", "mmmm", NULL }, "Seed each" },
	{ { "pppp", "....", NULL }, "Layers are spread and tamped one at a time" },
	{ { "llllllll", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		", but over the base of a wall only what fits under the turf;" },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		" Liner, a permeable filter fabric, inside the walls, as high as the soil" },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		" A wall's base reaches past both its faces, " },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL }, " Blocks are square-ended, " },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		" Blocks broken 5 %: more blocks to buy." },
	{ { "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", "bbbbbbbb", NULL },
		" Blocks: long x deep x high." },
	{ { "pppp", NULL }, " Fines: with its dust, which packs it hard. Layers are spread " },
	{ { "qqqq", NULL }, " Clean: washed of its dust. Layers are spread " },
	{ { "pppp", NULL }, " Where each of these is: the plan (--only front)." },
	{ { "pS", NULL }, " base of fixtures " },
	{ { "pppp", NULL }, " ask locally; it sets bases and posts." },
	{ { "llll", NULL }, ": more soil to buy." },
};
enum { TOLD = sizeof told / sizeof *told };

static void set_if_there(char letter, enum attribute attribute, const char *value)
{
	if (plot_entry(&garden.plot, letter))
		plot_set(&garden.plot, letter, attribute, value);
}

START_TEST(what_a_plot_has_is_told)
{
	garden_rows(&garden, told[_i].rows);
	set_if_there('m', LAWN_COVER, "seed");
	set_if_there('c', BED_BUILD, "level");
	set_if_there('q', PATH_STONE, "clean");
	set_if_there('d', BED_CAP, "16 in x 8 in x 2 in");
	print();
	ck_assert_msg(says(told[_i].words), "%s", told[_i].words);
}
END_TEST

/* A lawn sown, without anything else. */
START_TEST(what_it_lacks_is_not)
{
	static const char *const lacking[] = { "with a minus", "Two letters", "ground-level beds",
		"is a fixture", "or a fixture", "raised bed's wall", "held side", "drop bolt",
		"Whole sections", "Layers are", "Liner, a", "under the turf", "its sod laid back",
		"A wall's base", "post holes", "Blocks are", "blocks to buy", "Blocks: long",
		"sets bases", "stone to buy", "Edging along", "Keep the sod",
		"Fines", "Clean: ", "Amended", "how wide holes are" };

	garden_rectangle(&garden, 'm', 4, 4);
	plot_set(&garden.plot, 'm', LAWN_COVER, "seed");
	print();
	for (size_t i = 0; i < sizeof lacking / sizeof *lacking; i++)
		ck_assert_msg(!says(lacking[i]), "%s", lacking[i]);
	ck_assert(says("Seed each"));
}
END_TEST

START_TEST(what_is_laid_without_adhesive_has_no_beads)
{
	garden_rectangle(&garden, 'b', 8, 4);
	plot_set(&garden.plot, 'b', BED_COURSES, "1");
	print();
	ck_assert(says(" Letters: sawn, ") && !says("Adhesive:"));
}
END_TEST

START_TEST(a_column_of_nothing_but_dashes_is_left_out)
{
	garden_rectangle(&garden, 'l', 4, 4);
	print();
	ck_assert(!says("Seed each"));
}
END_TEST

START_TEST(sod_goes_back_only_where_there_is_some)
{
	garden_rectangle(&garden, 'b', 8, 4);
	print();
	/* 76 x 28 in. */
	ck_assert(says("Keep the sod of 14.8 sq ft, to be laid back inside the walls."));
	ck_assert(says("14.8 sq ft of ground within beds is only loosened, and its sod laid back "
		"grass down: it is in no volume."));
	plot_set(&garden.plot, 0, ALLOW_SOD, "0 in");
	print();
	ck_assert(says("14.8 sq ft of ground within beds is only loosened: it is in no volume."));
	ck_assert(!says("Keep the sod") && !says("grass down"));
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("said of some");
	TCase *formation = suite_case(suite, "formation"), *some = suite_case(suite, "some");

	tcase_add_checked_fixture(formation, setup, teardown);
	tcase_add_test(formation, whether_walls_paths_and_fixtures_share_one_level);
	tcase_add_test(formation, a_kind_of_several_depths_is_told_from_the_least_to_the_most);
	tcase_add_checked_fixture(some, setup, teardown);
	tcase_add_loop_test(some, what_a_plot_has_is_told, 0, TOLD);
	tcase_add_test(some, what_it_lacks_is_not);
	tcase_add_test(some, what_is_laid_without_adhesive_has_no_beads);
	tcase_add_test(some, a_column_of_nothing_but_dashes_is_left_out);
	tcase_add_test(some, sod_goes_back_only_where_there_is_some);
	return suite;
}
