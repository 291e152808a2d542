/* What is seen of each cell, without a terminal: its letter, its lines, what is carried. */

#include "base/memory.h"
#include "screen/scene.h"
#include "support/desk.h"
#include "support/fences.h"
#include "support/plots.h"
#include "support/runner.h"

#include <string.h>

#define ROWS (const char *[])

/* A cell's lines: | at its right, _ below it, L both, and heavier for a fence: ! = #; for a service
 * that is there ; . and for one to be laid H ~, with one that is there below it +. */
static char lines(const struct scene *scene, int x, int y)
{
	static const char signs[5][5] = { " _.~=", "|L???", ";????", "H?+??",
		"!???#" };

	return signs[scene_right(scene, x, y)][scene_below(scene, x, y)];
}

/* From the column left of the plan and the row above it on. */
static void check_lines(struct desk *b, const char *const *rows)
{
	struct scene scene;

	desk_refresh(b);
	scene = scene_of(&b->editor);
	for (int y = 0; rows[y]; y++)
		for (int x = 0; rows[y][x]; x++)
			ck_assert_msg(lines(&scene, x - 1, y - 1) == rows[y][x],
				"%d,%d has '%c', not '%c'", x - 1, y - 1,
				lines(&scene, x - 1, y - 1), rows[y][x]);
}

START_TEST(walls_run_round_beds_and_nothing_else)
{
	struct desk *b = desk_new(ROWS { "pp.l", ".bb.", ".bcS", "bb..", NULL });

	b->editor.cursor = (struct place){ 0, 0 };
	check_lines(b, ROWS { "     ", "  __ ", " | L ", " L|L ", "|_L  ", NULL });
	desk_free(b);
}
END_TEST

START_TEST(fences_stand_before_walls_and_a_gate_is_a_gap)
{
	struct desk *b = desk_new(ROWS { "....", ".bb.", ".bb.", "....", NULL });

	fence_from(editor_edit(&b->editor), "1,1 3,1 3,3 1,3 1,1", "2,1 3,1; 3,2 3,3");
	plot_set(editor_edit(&b->editor), 0, ALLOW_GATE_CLEAR, "8 in");
	editor_stroke(&b->editor);
	check_lines(b, ROWS { "     ", "  =  ", " ! ! ", " !== ", "     ", NULL });
	desk_free(b);
}
END_TEST

static void line_add(struct desk *b, bool is_to_lay, struct place from, struct place to)
{
	struct services *services = &editor_edit(&b->editor)->details.around.services;
	struct service *service = services_add(services, SERVICE_WATER, is_to_lay,
		memory_string("Pipe"));
	struct route *route = routes_add(&service->routes);

	route_add(route, from);
	route_add(route, to);
	editor_stroke(&b->editor);
}

START_TEST(services_stand_before_walls_and_behind_fences_and_gates)
{
	struct desk *b = desk_new(ROWS { "....", ".bb.", ".bb.", "....", NULL });

	line_add(b, false, (struct place){ 0, 1 }, (struct place){ 3, 1 });
	line_add(b, true, (struct place){ 1, 0 }, (struct place){ 1, 4 });
	check_lines(b, ROWS { "     ", " +.. ", " H | ", " H_L ", " H   ", NULL });
	fence_from(editor_edit(&b->editor), "1,1 1,3", "1,2 1,3");
	plot_set(editor_edit(&b->editor), 0, ALLOW_GATE_CLEAR, "8 in");
	editor_stroke(&b->editor);
	check_lines(b, ROWS { "     ", " +.. ", " ! | ", "  _L ", " H   ", NULL });
	desk_free(b);
}
END_TEST

static void keep_add(struct desk *b, struct obstacles *obstacles, struct rectangle cells)
{
	obstacles_add(obstacles, memory_string("Thing"))->cells = cells;
	editor_stroke(&b->editor);
	desk_refresh(b);
}

START_TEST(a_house_has_a_sign_and_what_is_kept_another)
{
	struct desk *b = desk_new(ROWS { "....", ".bb.", NULL });
	struct surroundings *around = &editor_edit(&b->editor)->details.around;
	struct scene scene;

	keep_add(b, &around->kept, (struct rectangle){ 0, 0, 1, 0 });
	around = &editor_edit(&b->editor)->details.around;
	keep_add(b, &around->houses, (struct rectangle){ 1, -3, 2, 1 });
	scene = scene_of(&b->editor);
	ck_assert_int_eq(scene_sign(&scene, 0, 0), 'k');
	ck_assert_int_eq(scene_sign(&scene, 1, 0), 'h'); /* both: the house */
	ck_assert_int_eq(scene_sign(&scene, 2, 1), 'h');
	ck_assert_int_eq(scene_sign(&scene, 0, 1), L'\0');
	ck_assert_int_eq(scene_sign(&scene, 3, 0), L'\0');
	desk_free(b);
}
END_TEST

/* Without colours; the cursor's own cell always. */
START_TEST(letters_stand_at_corners_and_where_the_cursor_is)
{
	struct desk *b = desk_new(ROWS { "lllll", "lllll", "lllll", "lllll", NULL });
	struct scene scene;

	b->editor.cursor = (struct place){ 2, 1 };
	scene = scene_of(&b->editor);
	for (int y = 0; y < 4; y++)
		for (int x = 0; x < 5; x++)
			ck_assert_int_eq(scene_is_lettered(&scene, x, y),
				(x % 4 == 0 && y % 3 == 0) || (x == 2 && y == 1));
	scene.level = COLOUR_FINE;
	ck_assert(!scene_is_lettered(&scene, 2, 0) && scene_is_lettered(&scene, 4, 3));
	desk_free(b);
}
END_TEST

START_TEST(what_is_carried_lies_at_the_cursor_and_what_is_marked_has_an_outline)
{
	struct desk *b = desk_new(ROWS { "bb....", "p.....", "......", "......", NULL });
	struct scene scene;

	b->editor.peg = (struct place){ 0, 0 };
	b->editor.cursor = (struct place){ 1, 1 };
	b->editor.is_pegged = true;
	editor_mark(&b->editor);
	b->editor.cursor = (struct place){ 3, 2 };
	scene = scene_of(&b->editor);
	ck_assert_int_eq(scene_letter(&scene, 3, 2), 'b');
	ck_assert_int_eq(scene_letter(&scene, 4, 2), 'b');
	ck_assert_int_eq(scene_letter(&scene, 3, 3), 'p');
	ck_assert_int_eq(scene_letter(&scene, 4, 3), '.');
	ck_assert_int_eq(scene_letter(&scene, 0, 0), 'b');
	ck_assert_int_eq(scene_letter(&scene, -1, 0), '\0');
	ck_assert_int_eq(scene_commonest(&scene, (struct rectangle){ 3, 2, 4, 3 }), 'b');
	ck_assert(scene_is_covered(&scene, 1, 1) && !scene_is_covered(&scene, 2, 1));
	ck_assert(scene_is_covered(&scene, 3, 2) && !scene_is_covered(&scene, 4, 2));
	desk_free(b);
}
END_TEST

START_TEST(an_outline_is_a_rim_whatever_the_size_of_what_is_asked)
{
	struct desk *b = desk_new(ROWS { "......", "......", "......", "......", "......", NULL });
	struct scene scene;

	b->editor.peg = (struct place){ 1, 1 };
	b->editor.cursor = (struct place){ 4, 4 };
	b->editor.is_pegged = true;
	scene = scene_of(&b->editor);
	for (int y = 0; y < 5; y++)
		for (int x = 0; x < 6; x++) {
			bool is_in = x >= 1 && x <= 4 && y >= 1;
			bool is_rim = is_in && (x == 1 || x == 4 || y == 1 || y == 4);

			ck_assert_int_eq(scene_is_outlined(&scene,
				(struct rectangle){ x, y, x, y }), is_rim);
		}
	ck_assert(scene_is_outlined(&scene, (struct rectangle){ 0, 0, 5, 4 }));
	ck_assert(scene_is_outlined(&scene, (struct rectangle){ 3, 3, 5, 4 }));
	ck_assert(!scene_is_outlined(&scene, (struct rectangle){ 2, 2, 3, 3 }));
	ck_assert(!scene_is_outlined(&scene, (struct rectangle){ 5, 0, 5, 4 }));
	desk_free(b);
}
END_TEST

START_TEST(shades_go_by_the_order_in_the_legend)
{
	struct desk *b = desk_new(ROWS { "bcpbq", NULL });
	struct scene scene = scene_of(&b->editor);

	scene.level = COLOUR_FINE;
	ck_assert_int_eq(scene_ground(&scene, 'b').ground,
		colour_of(COLOUR_FINE, CLASS_BED, 0).ground);
	ck_assert_int_eq(scene_ground(&scene, 'c').ground,
		colour_of(COLOUR_FINE, CLASS_BED, 1).ground);
	ck_assert_int_eq(scene_ground(&scene, 'q').ground,
		colour_of(COLOUR_FINE, CLASS_PATH, 1).ground);
	ck_assert_int_eq(scene_ground(&scene, '.').ground, COLOUR_DEFAULT);
	desk_free(b);
}
END_TEST

/* 3 by 2 cells of a foot, from 0 at the left to 6 in at the right, where the second drop is. */
static struct desk *sit_on_slope(const nm drops[4])
{
	struct desk *b = desk_new(ROWS { "b.p", "b.p", NULL });
	struct levels *levels = &editor_edit(&b->editor)->details.levels;

	levels_init(levels, 3 * NM_PER_FOOT, 2, 2);
	memcpy(levels->drops, drops, 4 * sizeof *drops);
	editor_stroke(&b->editor);
	b->editor.layer = LAYER_LEVELS;
	b->editor.cursor = (struct place){ 0, 1 };
	return b;
}

#define IN NM_PER_INCH

/* The middles of the cells are at 1/6, 3/6 and 5/6 of the way: 9 times that, whole. */
START_TEST(while_levels_are_shown_ground_has_the_shade_of_its_depth)
{
	struct desk *b = sit_on_slope((const nm[]){ 2 * IN, 8 * IN, 2 * IN, 8 * IN });
	struct scene scene = scene_of(&b->editor);
	static const int depths[] = { 1, 4, 7 };

	scene.level = COLOUR_FINE;
	ck_assert(scene_is_shaded(&scene));
	for (int x = 0; x < 3; x++) {
		ck_assert_int_eq(scene_depth(&scene, (struct rectangle){ x, 0, x, 0 }), depths[x]);
		ck_assert_int_eq(scene_paint(&scene, x, 0).ground, colour_depth(depths[x]).ground);
	}
	ck_assert_int_eq(scene_depth(&scene, (struct rectangle){ 0, 0, 2, 1 }), 4);
	ck_assert_int_eq(scene_paint(&scene, 0, 1).ground, colour_cursor(COLOUR_FINE).ground);
	b->editor.layer = LAYER_NONE;
	scene = scene_of(&b->editor);
	scene.level = COLOUR_FINE;
	ck_assert(!scene_is_shaded(&scene));
	ck_assert_int_eq(scene_paint(&scene, 0, 0).ground, scene_ground(&scene, 'b').ground);
	desk_free(b);
}
END_TEST

/* Downwards the two rows are at 1/6 and 3/6 of the way. */
START_TEST(depths_go_down_the_plan_too_and_the_shadows_of_a_moment_stand_before_them)
{
	static const struct moment moment = { .quarter = 40 };
	struct desk *b = sit_on_slope((const nm[]){ 2 * IN, 2 * IN, 8 * IN, 8 * IN });
	struct scene scene = scene_of(&b->editor);

	ck_assert_int_eq(scene_depth(&scene, (struct rectangle){ 2, 0, 2, 0 }), 1);
	ck_assert_int_eq(scene_depth(&scene, (struct rectangle){ 2, 1, 2, 1 }), 4);
	b->editor.moment = &moment;
	scene = scene_of(&b->editor);
	ck_assert_ptr_null(scene.levels);
	b->editor.moment = NULL;
	ck_assert_ptr_nonnull(scene_of(&b->editor).levels);
	desk_free(b);
	b = desk_new(ROWS { "b.p", NULL });
	b->editor.layer = LAYER_LEVELS;
	ck_assert_ptr_null(scene_of(&b->editor).levels); /* none are told */
	desk_free(b);
}
END_TEST

START_TEST(levels_that_are_all_alike_and_those_in_few_colours_have_no_shades)
{
	struct desk *b = sit_on_slope((const nm[]){ 5 * IN, 5 * IN, 5 * IN, 5 * IN });
	struct scene scene = scene_of(&b->editor);

	scene.level = COLOUR_FINE;
	ck_assert(!scene_is_shaded(&scene));
	ck_assert_int_eq(scene_depth(&scene, (struct rectangle){ 2, 0, 2, 0 }), 0);
	desk_free(b);
	b = sit_on_slope((const nm[]){ 0, 5 * IN, 0, 5 * IN });
	scene = scene_of(&b->editor);
	ck_assert(!scene_is_shaded(&scene));
	ck_assert_int_eq(scene_paint(&scene, 2, 0).ground, COLOUR_DEFAULT);
	scene.level = COLOUR_BASIC;
	ck_assert(!scene_is_shaded(&scene));
	ck_assert_int_eq(scene_paint(&scene, 2, 0).ground, scene_ground(&scene, 'p').ground);
	desk_free(b);
}
END_TEST

Suite *test_suite(void)
{
	Suite *suite = suite_create("scene");
	TCase *scenes = suite_case(suite, "scenes");

	tcase_add_test(scenes, walls_run_round_beds_and_nothing_else);
	tcase_add_test(scenes, fences_stand_before_walls_and_a_gate_is_a_gap);
	tcase_add_test(scenes, services_stand_before_walls_and_behind_fences_and_gates);
	tcase_add_test(scenes, a_house_has_a_sign_and_what_is_kept_another);
	tcase_add_test(scenes, letters_stand_at_corners_and_where_the_cursor_is);
	tcase_add_test(scenes,
		what_is_carried_lies_at_the_cursor_and_what_is_marked_has_an_outline);
	tcase_add_test(scenes, an_outline_is_a_rim_whatever_the_size_of_what_is_asked);
	tcase_add_test(scenes, shades_go_by_the_order_in_the_legend);
	tcase_add_test(scenes, while_levels_are_shown_ground_has_the_shade_of_its_depth);
	tcase_add_test(scenes,
		depths_go_down_the_plan_too_and_the_shadows_of_a_moment_stand_before_them);
	tcase_add_test(scenes, levels_that_are_all_alike_and_those_in_few_colours_have_no_shades);
	return suite;
}
