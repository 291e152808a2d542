#include "plot/edit/plants_lay.h"
#include "plot/edit/lay.h"

#include <stdlib.h>

bool class_takes_plant(enum plot_class class)
{
	return class == CLASS_BED || class == CLASS_LAWN || class == CLASS_OPEN;
}

/* ---- Specimens ------------------------------------------------------------------------------- */

static int64_t lift_kind(struct plant *plant, struct place at)
{
	size_t index = plant_specimen(plant, at);

	if (index == plant->specimen_count)
		return 0;
	plant_remove_specimen(plant, index);
	return 1;
}

static int64_t set_one(struct plants *plants, char letter, struct place at)
{
	int64_t changed = 0;

	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];

		if (plant->letter != letter) {
			changed += lift_kind(plant, at);
		} else if (plant_specimen(plant, at) == plant->specimen_count) {
			plant_add_specimen(plant, at);
			changed++;
		}
	}
	return changed;
}

struct planted plants_set(struct plot *plot, char letter, struct place at)
{
	struct mirror mirror = mirror_of(plot);
	struct planted planted = { 0, false, false };
	struct place images[IMAGES_MOST];
	int count = mirror_cells(&mirror, at.x, at.y, images);

	for (int i = 0; i < count; i++) {
		struct place image = images[i];

		if (!ground_holds(&plot->ground, image.x, image.y))
			planted.outside = true;
		else if (!class_takes_plant(plot_class_of(plot,
			ground_cell(&plot->ground, image.x, image.y))))
			planted.is_barred = true;
		else
			planted.changed += set_one(&plot->details.plants, letter, image);
	}
	return planted;
}

int64_t plants_lift(struct plot *plot, struct place at)
{
	struct mirror mirror = mirror_of(plot);
	struct plants *plants = &plot->details.plants;
	struct place images[IMAGES_MOST];
	int count = mirror_cells(&mirror, at.x, at.y, images);
	int64_t lifted = 0;

	for (size_t i = 0; i < plants->count; i++) {
		struct plant *plant = &plants->items[i];

		if (plant_specimen(plant, at) == plant->specimen_count)
			continue;
		for (int j = 0; j < count; j++)
			lifted += lift_kind(plant, images[j]);
	}
	return lifted;
}

/* ---- Drifts ---------------------------------------------------------------------------------- */

static size_t find_drift(const struct plant *plant, struct drift drift)
{
	size_t i = 0;

	while (i < plant->drift_count && !drift_equal(&plant->drifts[i], &drift))
		i++;
	return i;
}

static int64_t add_drift(struct plant *plant, struct drift drift)
{
	if (find_drift(plant, drift) < plant->drift_count)
		return 0;
	plant_add_drift(plant, drift);
	return 1;
}

static bool are_joined(struct ground *ground, struct place one, struct place other)
{
	size_t count;
	struct rectangle *rows = lay_patch(ground, one, &count);
	bool is_in = false;

	for (size_t i = 0; i < count && !is_in; i++)
		is_in = rectangle_holds(rows[i], other);
	free(rows);
	return is_in;
}

/* Whether the first of the images, or another before this one, has the bed of this one already. */
static bool is_bed_again(struct ground *ground, const struct place *images, int index)
{
	for (int i = 0; i < index; i++)
		if (ground_holds(ground, images[i].x, images[i].y) &&
			are_joined(ground, images[i], images[index]))
			return true;
	return false;
}

struct planted plants_fill(struct plot *plot, char letter, struct place at, enum band band,
	bool is_all)
{
	struct plant *plant = plants_find(&plot->details.plants, letter);
	struct mirror mirror = mirror_of(plot);
	struct ground *ground = &plot->ground;
	struct planted planted = { 0, false, false };
	char bed = ground_cell(ground, at.x, at.y);
	struct place images[IMAGES_MOST];
	int count = is_all ? 0 : mirror_cells(&mirror, at.x, at.y, images);

	if (is_all)
		planted.changed += add_drift(plant, (struct drift){ .letter = bed, .band = band });
	for (int i = 0; i < count; i++) {
		struct place image = images[i];

		if (!ground_holds(ground, image.x, image.y))
			planted.outside = true;
		else if (ground_cell(ground, image.x, image.y) != bed)
			planted.is_barred = true;
		else if (!is_bed_again(ground, images, i))
			planted.changed += add_drift(plant,
				(struct drift){ .at = image, .band = band });
	}
	return planted;
}

int64_t plants_empty(struct plot *plot, char letter, struct drift drift)
{
	struct plant *plant = plants_find(&plot->details.plants, letter);
	struct mirror mirror = mirror_of(plot);
	struct place images[IMAGES_MOST] = { drift.at };
	int count = drift.letter ? 1 : mirror_cells(&mirror, drift.at.x, drift.at.y, images);
	int64_t emptied = 0;

	for (int i = 0; i < count; i++) {
		size_t index;

		drift.at = images[i];
		index = find_drift(plant, drift);
		if (index == plant->drift_count)
			continue;
		plant_remove_drift(plant, index);
		emptied++;
	}
	return emptied;
}
