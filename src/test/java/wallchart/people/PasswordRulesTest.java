package wallchart.people;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import wallchart.people.Registration.Reason;

class PasswordRulesTest {

    @ParameterizedTest
    @ValueSource(
            strings = {
                "sieben graue Gänse",
                "fifteen letters",
                "Zx9!kQ2#mW7$pL4",
                "1937 4826 5093 71",
                "ключ от дома на полке",
                "passwords are what we type all day"
            })
    void long_and_unusual_is_enough(String password) {
        assertThat(PasswordRules.check(password, "aino")).isEmpty();
    }

    @Test
    void fifteen_characters_are_counted_as_people_count_them() {
        assertReason("fourteen chars", Reason.PASSWORD_TOO_SHORT);
        assertReason("🦴🩻🦷👣🖐🦵🫁", Reason.PASSWORD_TOO_SHORT); // 14 Java chars, 7 characters
        assertReason("🦴🩻🦷👣🖐🦵🫁🦶👂👃👁🧠🫀🦾", Reason.PASSWORD_TOO_SHORT); // 28 and 14
        assertThat(PasswordRules.check("🦴🩻🦷👣🖐🦵🫁🦶👂👃👁🧠🫀🦾🦿", "aino"))
                .isEmpty();
    }

    @Test
    void an_endless_password_is_refused_before_anybody_hashes_it() {
        assertReason("ab1 ".repeat(64) + "x", Reason.PASSWORD_TOO_LONG);
    }

    @Test
    void letters_composed_of_parts_are_refused() {
        assertReason("sieben graue Ga\u0308nse", Reason.PASSWORD_NOT_NORMALIZED);
    }

    @Test
    void half_a_character_is_refused_because_it_has_no_hash() {
        assertReason("sieben graue G\ud800nse", Reason.PASSWORD_NOT_NORMALIZED);
    }

    @Test
    void the_own_name_inside_is_refused() {
        assertReason("Aino likes long walks", Reason.PASSWORD_HAS_NAME);
    }

    @Test
    void the_beginning_known_from_the_demonstration_is_refused() {
        assertReason("demo-and-much-more-than-that", Reason.PASSWORD_FOR_DEMONSTRATION);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "Correct Horse Battery Staple",
                "passwordpassword",
                "Radiographer-1234",
                "aaaaaaaaaaaaaaaaaaaa",
                "abcabcabcabcabcabc",
                "123456789012345",
                "abcdefghijklmnop",
                "zyxwvutsrqponmlk",
                "qwertyuiop asdfgh"
            })
    void what_anybody_would_try_first_is_refused(String password) {
        assertReason(password, Reason.PASSWORD_COMMON);
    }

    @Test
    void no_refusal_repeats_the_password() {
        assertThat(PasswordRules.check("fourteen chars", "aino").orElseThrow().text())
                .contains("14", "15")
                .doesNotContain("fourteen");
    }

    private static void assertReason(String password, Reason reason) {
        assertThat(PasswordRules.check(password, "aino"))
                .map(Registration.Refused::reason)
                .contains(reason);
    }
}
