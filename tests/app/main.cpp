#include "shell/dress.h"

#include <gtest/gtest.h>
#include <QApplication>

/// Widgets need an application; it runs without a screen unless told otherwise.
int main(int count, char** arguments) {
    if (!qEnvironmentVariableIsSet("QT_QPA_PLATFORM")) qputenv("QT_QPA_PLATFORM", "offscreen");
    testing::InitGoogleTest(&count, arguments);
    QApplication application(count, arguments);
    rhizograph::app::dressApplication(rhizograph::app::ThemeName::light, 1.0);
    return RUN_ALL_TESTS();
}
