#include "screen/plan_light.h"
#include "report/words/figures.h"
#include "report/words/sun_words.h"
#include "screen/brush.h"
#include "screen/draw.h"
#include "screen/width.h"

#include <string.h>

/* One way to say it: words, then what each class is, on its own colour; NULL: not said so. */
struct scale {
	const char *words, *classes[SUN_CLASSES];
};
enum { WAYS = 3, CLASS_GAP = 1, CLASS_ROOM = 2 };

static int scale_columns(const struct scale *scale)
{
	int columns = width_of(scale->words);

	for (int i = 0; i < SUN_CLASSES; i++)
		if (scale->classes[i])
			columns += CLASS_GAP + width_of(scale->classes[i]) + CLASS_ROOM;
	return columns;
}

/* A blank at each of its ends. */
static int draw_class(const struct area *area, int column, const char *words, int class)
{
	struct paint paint = colour_light(class);
	int columns = width_of(words);

	brush_put(area, 0, column, L' ', paint);
	brush_cluster(area, 0, column + 1, words, strlen(words), paint);
	brush_put(area, 0, column + 1 + columns, L' ', paint);
	return column + columns + CLASS_ROOM;
}

/* The first of the ways for which there is room, else what has room of the last one's words. */
static void draw_ways(const struct area *area, const struct scale *ways, int count)
{
	int way = 0, column;

	while (way < count - 1 && scale_columns(&ways[way]) > area->columns)
		way++;
	column = draw_cut(area, 0, 0, ways[way].words, area->columns, LOOK_PLAIN);
	if (scale_columns(&ways[way]) > area->columns)
		return;
	for (int i = 0; i < SUN_CLASSES; i++)
		if (ways[way].classes[i])
			column = draw_class(area, column + CLASS_GAP, ways[way].classes[i], i);
}

/* "full sun: 6 and more", or without the class's name. */
static struct scale classes_scale(const struct report *report, const char *words, bool has_names)
{
	struct scale scale = { .words = words };

	for (enum sun_class i = SUN_FULL; i <= SUN_SHADE; i++)
		scale.classes[i] = has_names ? say(report, "%s: %s",
			word_label(&sun_class_words[i]), sun_class_hours(report, i)) :
			sun_class_hours(report, i);
	return scale;
}

/* "full sun from 6, part sun 4, part shade 2". */
static const char *bounds_words(const struct report *report)
{
	return say(report, "full sun from %s, part sun %s, part shade %s",
		sun_bound_words(report, SUN_FULL), sun_bound_words(report, SUN_PART),
		sun_bound_words(report, SUN_PART_SHADE));
}

static void draw_hours(const struct area *area, const struct report *report, bool has_shades)
{
	static const char words[] = "Hours of sun a day:";
	const struct scale shades[WAYS] = { classes_scale(report, words, true),
		classes_scale(report, words, false), classes_scale(report, "Sun:", false) };
	const struct scale signs[WAYS] = {
		{ .words = say(report, "%s + 10 and more; %s", words, bounds_words(report)) },
		{ .words = say(report, "Hours of sun: %s", bounds_words(report)) },
		{ .words = say(report, "Hours: %s", bounds_words(report)) } };

	draw_ways(area, has_shades ? shades : signs, WAYS);
}

static void draw_moment(const struct area *area, const struct report *report,
	const struct moment *moment, bool has_shades)
{
	const char *sun = light_moment_words(report, moment, true);
	const char *least = light_moment_words(report, moment, false);
	const struct scale shades[WAYS] = {
		{ sun, { [SUN_FULL] = "sun", [SUN_SHADE] = "shade" } },
		{ least, { [SUN_FULL] = "sun", [SUN_SHADE] = "shade" } }, { .words = least } };
	const struct scale signs[WAYS] = {
		{ .words = say(report, "%s; %c shade", sun, LIGHT_SHADE_SIGN) },
		{ .words = say(report, "%s; %c shade", least, LIGHT_SHADE_SIGN) },
		{ .words = least } };

	draw_ways(area, has_shades ? shades : signs, WAYS);
}

void plan_light_draw_scale(const struct editor *editor, const struct area *area)
{
	const struct light light = light_of(editor);
	bool has_shades = colour_level() == COLOUR_FINE;
	struct arena words = ARENA_EMPTY;
	struct report report = editor_report(editor, &words);

	if (!area->rows)
		return;
	if (light.moment)
		draw_moment(area, &report, light.moment, has_shades);
	else if (light.steps)
		draw_hours(area, &report, has_shades);
	else
		draw_cut(area, 0, 0, light_missing_words(editor), area->columns, LOOK_PLAIN);
	arena_clear(&words);
}
