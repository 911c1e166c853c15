/** Words about the damper, its oil and its gas, in English. */
import { plural } from './plural.ts';

export const damperWords = {
  damper: {
    title: 'Damper, oil and gas',
    groups: {
      damper: 'Damper',
      pistonCompression: 'Piston face, compression',
      pistonRebound: 'Piston face, rebound',
      oil: 'Oil',
      gas: 'Gas',
    },
    name: 'Name',
    bore: 'Bore',
    rod: 'Rod',
    travel: 'Travel',
    friction: 'Seal friction',
    ports: 'Ports',
    portDiameter: 'Port diameter',
    portArea: 'Area of one port',
    portLength: 'Port length',
    zoneInner: 'Pressure zone, inside',
    zoneOuter: 'Pressure zone, outside',
    seatInner: 'Seat, inside',
    seatOuter: 'Seat, outside',
    viscosity40: 'Viscosity at 40 °C',
    isoGrade: 'Viscosity grade (ISO 3448)',
    viscosityIndex: 'Viscosity index',
    pointTemperature: (n: number) => `Point ${n}, temperature`,
    pointViscosity: (n: number) => `Point ${n}, viscosity`,
    density: 'Density at 15 °C',
    temperature: 'Oil temperature',
    gasPressure: 'Gas pressure, gauge',
    gasVolume: 'Gas volume',
    exponent: 'Polytropic exponent',
    summary: {
      damper: (bore: string, rod: string) => `${bore} bore, ${rod} rod`,
      valve: (count: number, size: string) => `${plural(count, 'port', 'ports')} ${size}`,
      oil: (name: string, temperature: string) => `${name}, ${temperature}`,
      gas: (pressure: string) => pressure,
    },
  },
};
