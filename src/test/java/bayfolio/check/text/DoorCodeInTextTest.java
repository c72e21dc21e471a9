package bayfolio.check.text;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

/** As people write codes, and what only looks like one. */
class DoorCodeInTextTest {
    private static final List<String> CODES = """
            The code is 4711.
            The code of the key box is 4711.
            The gate code: 4711
            Code 4711
            code=4711
            PIN 4711
            The PIN is 471.
            Your PIN, 4711, opens it.
            The combination of the padlock on the rear bay is 4711.
            Combination 4-7-1-1
            The code is "4711".
            The code (4711) opens the door.
            The code is 4 7 1 1.
            The code is 4.7.1.1.
            The door code is C4711.
            The passcode is 471100.
            The codes are 4711 and 4712.
            Access code: #4711*
            4711 is the code.
            4711 is the code of the gate.
            4711 is our alarm code.
            4711 opens the gate.
            4711 also opens the bay.
            4711# unlocks the box.
            4711 disarms it.
            4711 lets you in.
            4711 for the key box.
            4711 on the keypad.
            4711 at the gate.
            With 4711 you open the padlock.
            Use 4711 at the gate.
            Use 4711 for the door.
            Type 4711.
            Type in 4711 and wait.
            Enter 4711, then turn the knob.
            Enter the code 4711.
            Punch 4711 into the pad.
            Key in 471 and pull.
            Dial 4711 to get in.
            Tap 4711.
            Press 4-7-1-1 on the pad.
            Press 4 7 1 1.
            Press 4, 7, 1, 1.
            Press 4, then 7, then 1, then 1.
            Push the buttons 4711.
            Press #4711*.
            It wants *4711#.
            The keys are in the box: #4711.
            Set the wheels to 4711.
            Turn the dials to 4-7-1-1.
            Line up the rings at 471.
            Key box 4711
            The key box beside the door: 4711.
            Lock box 4711 beside the door.
            Gate 4711.
            The padlock takes 4711.
            The lock opens with 4711.
            The door to the shed opens with 4711.
            The alarm goes quiet with 4711.
            Box: 4711
            It is 4 7 1 1.
            The code is four seven one one.
            The box opens with four, seven, one, one.
            Four seven one one opens the gate.
            The code is four, then seven, then one.
            The code is forty-seven eleven.
            The code is double four seven.
            Forty-seven eleven opens the gate.
            vier sieben eins eins
            Der Code ist vier sieben eins.
            Der Code ist 4711.
            Der Türcode lautet 4711.
            Zahlenschloss 4711
            Schlüsselbox: 4711
            4711 öffnet das Tor.
            The password: GoneCamping7
            The password is GoneCamping7.
            The password is sunflower.
            Password Heron2020
            The Wi-Fi password is "gone camping".
            Wi-Fi key: heronheron
            Wi-Fi: Heron2020
            Wi-Fi HollinBay, Heron2020
            Log in with Heron2020.
            Heron2020 is the password.
            Heron2020 for the Wi-Fi.
            WLAN-Schlüssel: Reiher2020
            Passwort: Reiher
            The network key is Heron-2020.
            """.lines().toList();

    private static final List<String> INNOCENT = """
            Press twice.
            Key C
            R134a
            12 V
            Week 18 of 2024
            L4
            LT225/75R16
            Type 27 battery
            Dial 911.
            Dial 112 first.
            Press 911 and wait.
            Dial 12 times if it is engaged.
            Press 100 times.
            Enter 230 V.
            The gate is 2500 mm wide, and the alarm sounds for 1200 s.
            Two or three people, four or five beds.
            One, two or three turns.
            The alarm of 2019 is good for ten years.
            The alarm was made in 2019.
            The safe was fitted in 2021.
            The lock was changed on 2024-05-12.
            Open 08:00-18:00
            From 8 to 18, on Sundays from 10 to 16.
            9 to 5, Monday to Friday
            Alarm at 07:30.
            Error code 104 means no flame.
            The fault code 1042 is shown.
            Area code 555
            The zip code is 97365.
            Color code 1234
            DOT code 1824
            The code is in your message.
            Your message has the code of the door.
            Open the box with the code of your message.
            Note the code of the fault, such as E-12.
            Code E-12 is low water.
            The password is printed on the router.
            The password is on a sticker inside the locker.
            The password is in your message.
            The password is secret.
            Password: see your message.
            Wi-Fi on 2.4 GHz and 5 GHz
            The router has 4 sockets.
            The network is WPA2.
            The Wi-Fi is slow in the hills.
            Combination of 3 keys
            The combination must weigh less than 12,000 lb.
            The combination weighs 26000 lb.
            The combination may weigh 3500 kg.
            The pin is 300 mm long.
            Hitch pin 5/8 in
            Hold it for 3 seconds, then wait 120 seconds.
            Push it in 100 mm.
            Turn to 100 psi.
            Set the dial to 3.
            Set the thermostat to 68.
            Set it to 120 V.
            Set the regulator to 11 in.
            Four of six lamps
            One two-way tap
            Two one-pound cylinders, two five-pound ones
            Part #4711
            Fuse no. 12, 15 A
            AWG #10
            Serial 4-1199
            Model 1824 of 2020
            110-120 V, 60 Hz, 1800 W
            Gate 3 of the depot
            Doors 1 to 4
            The door is 1200 mm high.
            Rinse with 1000 ml.
            Box of 100 fuses
            Use 1500 W at most on this socket.
            Key turned, lamp on.
            Type B socket, 230 V
            Type A
            Type 2 plug, 7400 W
            Press 1 for more.
            Enter at the rear door.
            Safe for 1500 lb.
            Safe up to 2000 m.
            The gas alarm sounds at 2000 ppm.
            """.lines().toList();

    @Test
    void eachWayOfWritingACodeIsTold() {
        assertThat(CODES)
                .hasSizeGreaterThan(60)
                .allSatisfy(
                        code -> assertThat(DoorCodeInText.code(code)).as(code).isPresent());
    }

    @Test
    void nothingElseIsTakenForOne() {
        assertThat(INNOCENT)
                .hasSizeGreaterThan(60)
                .allSatisfy(
                        text -> assertThat(DoorCodeInText.code(text)).as(text).isEmpty());
    }
}
