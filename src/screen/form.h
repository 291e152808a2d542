/* Forms: labels and fields over the panel and the plan's right, so that the plan stays in view. */
#ifndef SCREEN_FORM_H
#define SCREEN_FORM_H

#include "screen/stage.h"

bool form_fill(struct stage *stage, struct card *card);

#endif
