/* Below the plan, where there is room: what depths mean while levels are shown, a scale, where
 * north is if the plot says so, its title. */
#ifndef SCREEN_CAPTION_H
#define SCREEN_CAPTION_H

#include "screen/layout.h"
#include "screen/scene.h"

/* In this area, of a row at least. Depths have the first one to themselves. A title takes more of
 * them where it has no room beside the rest; where there are no more it stands before the scale,
 * which rulers have too. */
void caption_draw(const struct scene *scene, const struct area *area);

#endif
