<?xml version="1.0" encoding="utf-8"?>
<!DOCTYPE TS>
<TS version="2.1" language="en" sourcelanguage="en">
<context>
    <name>LostWords</name>
    <message numerus="yes">
        <source>%n entries could not be saved:</source>
        <translation>
            <numerusform>One entry could not be saved:</numerusform>
            <numerusform>%n entries could not be saved:</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>… and %n more</source>
        <translation>
            <numerusform>… and one more</numerusform>
            <numerusform>… and %n more</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>PapersText</name>
    <message numerus="yes">
        <source>%n date(s) exported</source>
        <translation>
            <numerusform>%n date exported</numerusform>
            <numerusform>%n dates exported</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>QObject</name>
    <message numerus="yes">
        <source>%n entries were saved</source>
        <translation>
            <numerusform>One entry was saved</numerusform>
            <numerusform>%n entries were saved</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n entries were exported</source>
        <translation>
            <numerusform>One entry was exported</numerusform>
            <numerusform>%n entries were exported</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::DueList</name>
    <message numerus="yes">
        <source>%n due</source>
        <translation>
            <numerusform>%n due</numerusform>
            <numerusform>%n due</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::EntryForm</name>
    <message numerus="yes">
        <source>Logged, and of %n more keg(s): %1</source>
        <translation>
            <numerusform>Logged, and of one more keg: %1</numerusform>
            <numerusform>Logged, and of %n more kegs: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::GasPage</name>
    <message numerus="yes">
        <source>%n in use</source>
        <translation>
            <numerusform>%n in use</numerusform>
            <numerusform>%n in use</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::ImportKegs</name>
    <message numerus="yes">
        <source>%n keg(s) will be registered</source>
        <translation>
            <numerusform>%n keg will be registered</numerusform>
            <numerusform>%n kegs will be registered</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) imported</source>
        <translation>
            <numerusform>%n keg imported</numerusform>
            <numerusform>%n kegs imported</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegsPage</name>
    <message numerus="yes">
        <source>%n kegs</source>
        <translation>
            <numerusform>%n keg</numerusform>
            <numerusform>%n kegs</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::LogPage</name>
    <message numerus="yes">
        <source>%n entries</source>
        <translation>
            <numerusform>%n entry</numerusform>
            <numerusform>%n entries</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::RegisterKegs</name>
    <message numerus="yes">
        <source>%n keg(s) will be registered</source>
        <translation>
            <numerusform>%n keg will be registered</numerusform>
            <numerusform>%n kegs will be registered</numerusform>
        </translation>
    </message>
    <message numerus="yes">
        <source>%n keg(s) registered</source>
        <translation>
            <numerusform>%n keg registered</numerusform>
            <numerusform>%n kegs registered</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::StockTake</name>
    <message numerus="yes">
        <source>%n keg(s) logged. What you skipped can be logged any time.</source>
        <translation>
            <numerusform>%n keg logged. What you skipped can be logged any time.</numerusform>
            <numerusform>%n kegs logged. What you skipped can be logged any time.</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::TagListEdit</name>
    <message numerus="yes">
        <source>%n kegs: %1</source>
        <translation>
            <numerusform>%n keg: %1</numerusform>
            <numerusform>%n kegs: %1</numerusform>
        </translation>
    </message>
</context>
<context>
    <name>ullage::ui::KegsBar</name>
    <message numerus="yes">
        <source>%n keg(s) registered, contents not known yet. Say what is in them now.</source>
        <translation>
            <numerusform>Nothing is known yet about what is in %n keg. Say what is in it now.</numerusform>
            <numerusform>Nothing is known yet about what is in %n kegs. Say what is in them now.</numerusform>
        </translation>
    </message>
</context>
</TS>
