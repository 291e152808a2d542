#include "screen/hatch.h"

/* Without colours beds have the closest pattern. */
const cchar_t *hatch_sign(const struct scene *scene, char letter, int x, int y)
{
	enum plot_class class = plot_class_of(scene->editor->plot, letter);

	if (scene->level != COLOUR_NONE)
		return scene_is_hatched(scene, letter) ? WACS_CKBOARD : NULL;
	if (class == CLASS_PATH)
		return (x + y) % 2 == 0 ? WACS_DEGREE : NULL;
	return class == CLASS_BED ? WACS_CKBOARD : class == CLASS_LAWN ? WACS_BULLET :
		class == CLASS_FIXTURE ? WACS_DIAMOND : NULL;
}

bool hatch_is_closed(const struct scene *scene, char letter)
{
	return scene->level != COLOUR_NONE ||
		plot_class_of(scene->editor->plot, letter) == CLASS_BED;
}
