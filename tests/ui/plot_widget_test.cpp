// SPDX-License-Identifier: GPL-3.0-or-later
//
// What all charts share: a chart that has no room is not drawn, and is drawn again once
// it has some.
#include "ui/charts/plot_widget.h"

#include <gmock/gmock.h>

#include <QApplication>
#include <QStringList>
#include <QTest>

#include "ui/theme/theme.h"
#include "ui/theme/theme_switch.h"

namespace ullage::testing {
namespace {

QStringList plot_messages;

void keep_message(QtMsgType, const QMessageLogContext&, const QString& text) {
  plot_messages << text;
}

class CountedPlot final : public ui::PlotWidget {
 public:
  using PlotWidget::PlotWidget;
  int drawn = 0;

 private:
  [[nodiscard]] bool has_plot() const override { return true; }
  void draw_plot() override { ++drawn; }
};

TEST(Plot, WithoutRoomIsNotDrawn) {
  ui::dress(ui::light_theme());
  plot_messages.clear();
  const QtMessageHandler before = qInstallMessageHandler(keep_message);
  QWidget window;
  window.resize(400, 300);
  auto* plot = new CountedPlot(&window);
  window.show();
  EXPECT_TRUE(QTest::qWaitForWindowExposed(&window));
  for (const QSize& none : {QSize(0, 0), QSize(0, 200), QSize(300, 0)}) {
    plot->resize(300, 200);
    QTest::qWait(10);
    const int drawn = plot->drawn;
    plot->resize(none);
    QTest::qWait(10);  // what was put off to the next turn of the event loop, too
    EXPECT_EQ(plot->drawn, drawn) << none.width() << " x " << none.height();
  }
  const int drawn = plot->drawn;
  plot->resize(300, 200);
  QTest::qWait(10);
  EXPECT_GT(plot->drawn, drawn);
  qInstallMessageHandler(before);
  EXPECT_TRUE(plot_messages.filter(QStringLiteral("painter")).isEmpty())
      << plot_messages.join(QLatin1Char('\n')).toStdString();
}

}  // namespace
}  // namespace ullage::testing
