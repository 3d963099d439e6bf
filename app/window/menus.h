#pragma once

class QMenuBar;

namespace nettare {

struct Commands;
class ScreenStack;

/// Fills the menu bar. Screens that are added later join the menu View.
void buildMenus(QMenuBar& bar, const Commands& commands, ScreenStack& screens);

}  // namespace nettare
