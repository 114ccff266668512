// SPDX-License-Identifier: GPL-3.0-or-later
// Says of a stream of bytes, piece by piece, where it stops being UTF-8.
#pragma once

namespace slopebook::exchange {

/// Unicode 15, table 3-7: no overlong forms, no surrogates, nothing above U+10FFFF.
class Utf8Watch {
public:
    /// False where the byte cannot follow what was taken before.
    bool take(unsigned char byte) {
        if (m_awaited == 0)
            return begin(byte);
        if (byte < m_low || byte > m_high)
            return false;
        m_low = 0x80;
        m_high = 0xBF;
        --m_awaited;
        return true;
    }
    bool midCharacter() const { return m_awaited > 0; }

private:
    bool begin(unsigned char byte) {
        if (byte < 0x80)
            return true;
        if (byte < 0xC2 || byte > 0xF4)
            return false;
        m_awaited = byte < 0xE0 ? 1 : byte < 0xF0 ? 2 : 3;
        m_low = byte == 0xE0 ? 0xA0 : byte == 0xF0 ? 0x90 : 0x80;
        m_high = byte == 0xED ? 0x9F : byte == 0xF4 ? 0x8F : 0xBF;
        return true;
    }
    int m_awaited = 0;
    unsigned char m_low = 0x80, m_high = 0xBF;
};

} // namespace slopebook::exchange
