package slantlight.light;

import java.util.ArrayList;
import java.util.List;
import slantlight.scene.House;

/**
 * Where the light of one moment goes in one room, lm, reckoned from illuminances and exchange
 * factors: not by {@link EnergyBalance}.
 *
 * @param in straight from outside and from lamps, and bounced from other rooms through passages
 * @param absorbed kept by the room's surfaces
 * @param out bounced out through windows and through passages
 */
public record RoomEnergy(String roomId, double in, double absorbed, double out) {
  /** Share of the light that comes in that is not accounted for. */
  public double imbalance() {
    return Math.abs(in - absorbed - out) / in;
  }

  /** The lit rooms of a house. */
  public static List<RoomEnergy> of(Transport light, LightState state) {
    House house = light.house();
    // What falls on a surface when every surface is black came there without a bounce.
    Transport black = (Transport) light.changed(LightHouses.painted(house, 0)).orElseThrow();
    List<PatchLight> direct = black.surfaceLight(state);
    List<PatchLight> total = light.surfaceLight(state);
    RoomLight rooms = light.roomLight();
    int n = house.rooms().size();
    double[] again = new double[rooms.mesh.groups];
    for (Patch p : rooms.patches()) {
      double bounced = total.get(p.index()).illuminance() - direct.get(p.index()).illuminance();
      again[p.group()] += p.area() * bounced / rooms.mesh.groupArea[p.group()];
    }
    double[] in = new double[n];
    double[] absorbed = new double[n];
    double[] out = new double[n];
    for (Patch p : rooms.patches()) {
      int i = p.index();
      int g = p.group();
      double rho = rooms.mesh.groupReflectance[g];
      double straight = direct.get(i).illuminance();
      double open = rooms.exchange.openShare(i);
      in[p.room()] += p.area() * straight;
      absorbed[p.room()] += p.area() * total.get(i).illuminance() * (1 - rho);
      out[p.room()] += rho * p.area() * (straight + again[g]) * open;
      double seen = 0;
      double[] toRoom = new double[n];
      for (int h = 0; h < rooms.mesh.groups; h++) {
        double f = rooms.exchange.patchFactor(i, h);
        seen += f;
        toRoom[rooms.patches().get(rooms.mesh.groupStart[h]).room()] += f;
      }
      // The first bounce leaves from the patch, its shares made to add up to one; what is bounced
      // again leaves evenly from the group, whose shares are the mean of its patches'.
      double fit = seen > 0 ? (1 - open) / seen : 0;
      for (int r = 0; r < n; r++) {
        double across = rho * p.area() * toRoom[r] * (straight * fit + again[g]);
        if (r != p.room()) {
          out[p.room()] += across;
          in[r] += across;
        }
      }
    }
    List<RoomEnergy> lit = new ArrayList<>();
    for (int r = 0; r < n; r++) {
      if (in[r] > 0) {
        lit.add(new RoomEnergy(house.rooms().get(r).id(), in[r], absorbed[r], out[r]));
      }
    }
    return lit;
  }
}
