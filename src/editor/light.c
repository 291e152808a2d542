#include "editor/light.h"
#include "report/words/sun_words.h"

struct light light_of(const struct editor *editor)
{
	bool has_hours = editor->layer == LAYER_SUN && editor_has_light(editor);

	return (struct light){ .editor = editor, .moment = editor->moment,
		.is_asked = editor->moment || editor->layer == LAYER_SUN,
		.steps = has_hours ? pages_sun(&editor->pages) : NULL };
}

bool light_is_there(const struct light *light)
{
	return light->moment || light->steps;
}

static int steps_of(const struct light *light, struct place cell)
{
	return light->steps[(size_t)cell.y * (size_t)light->editor->plot->ground.columns +
		(size_t)cell.x];
}

bool light_has_cell(const struct light *light, struct place cell)
{
	if (light->moment)
		return sun_shadows_has_cell(&light->moment->shadows, cell);
	return light->steps && steps_of(light, cell) != SUN_NO_STEPS;
}

enum sun_class light_class(const struct light *light, struct place cell)
{
	if (light->moment)
		return sun_shadows_is_lit(&light->moment->shadows, cell) ? SUN_FULL : SUN_SHADE;
	return sun_class_of(&light->editor->takeoff, sun_usual_mean(steps_of(light, cell)));
}

char light_sign(const struct light *light, struct place cell)
{
	if (!light_has_cell(light, cell))
		return '\0';
	if (light->moment)
		return sun_shadows_is_lit(&light->moment->shadows, cell) ? '\0' : LIGHT_SHADE_SIGN;
	return sun_sign(sun_usual_mean(steps_of(light, cell)));
}

const char *light_missing_words(const struct editor *editor)
{
	return block_value(&editor->plot->details.head, HEAD_SITE)->set ?
		"Hours of sun: counting ..." :
		"No latitude is told: # The plot itself has a field for it.";
}

const char *light_moment_words(const struct report *report, const struct moment *moment,
	bool in_full)
{
	const struct sun_place *sun = &moment->shadows.sun;
	char date[DATE_SIZE];

	date_write(moment->date, date);
	return say(report, "%s %s%s: sun %s%s high, bearing %s", date, sun_time_words(report,
		(double)moment->quarter / QUARTERS_AN_HOUR), in_full ? " solar time" : " solar",
		plain_decimal(report, sun->height, 1), in_full ? " degrees" : "",
		plain_decimal(report, sun->azimuth, 1));
}
